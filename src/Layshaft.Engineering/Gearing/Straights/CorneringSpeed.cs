using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The steady speed of a car round a corner.</summary>
public static class CorneringSpeed
{
    /// <summary>
    /// The speed at which grip and downforce hold the car on a circle: m·v²/r = µ·(m·g + ½·ρ·c_l·A·v²), so
    /// v² = µ·g·r / (1 − µ·ρ·c_l·A·r/(2·m)) (Milliken and Milliken, Race Car Vehicle Dynamics, from memory). The road is flat across.
    /// </summary>
    /// <param name="vehicle">The car; its longitudinal grip is taken for the lateral one.</param>
    /// <param name="radius">Radius of the line, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>The speed, at most 150 m/s; that too if the downforce outgrows what the corner asks for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not above 0.</exception>
    public static Speed Steady(Vehicle vehicle, Length radius, AirState air)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius.Meters);
        VehicleSpec spec = vehicle.Spec;
        double left = 1 - (spec.Grip * air.DensityKgPerM3 * spec.DownforceArea.SquareMeters * radius.Meters / (2 * spec.Mass.Kilograms));
        double square = left > 0 ? spec.Grip * StandardAtmosphere.GravityMps2 * radius.Meters / left : double.PositiveInfinity;
        return Speed.FromMetersPerSecond(Math.Min(Math.Sqrt(square), RollingTyre.HighestSpeedMps));
    }
}
