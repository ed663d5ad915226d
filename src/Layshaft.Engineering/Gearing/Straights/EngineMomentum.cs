namespace Layshaft.Engineering.Gearing;

/// <summary>
/// What the engine's momentum gives back to the car at an upshift: two inertias come together without a spring between them (perfectly
/// inelastic engagement, any textbook of mechanics). What is not given back is the loss that <see cref="DogWork"/> counts.
/// </summary>
/// <remarks>
/// The engine is taken to keep its speed while the drive is interrupted. Its inertia at the contact is I·i²·η/r²; with the driveline's
/// efficiency, as in <see cref="DriveLaw"/>.
/// </remarks>
internal static class EngineMomentum
{
    /// <summary>The car's speed once the next gear is in.</summary>
    /// <param name="car">The car.</param>
    /// <param name="gears">Its gears.</param>
    /// <param name="from">The gear that was left, from 0.</param>
    /// <param name="beforeMps">Road speed when the drive was interrupted.</param>
    /// <param name="afterMps">Road speed when the next gear engages.</param>
    internal static double SpeedAfterMps(CarModel car, GearLimits gears, int from, double beforeMps, double afterMps)
    {
        double ratio = gears.OverallRatio[from + 1];
        double engineMps = car.SpeedMps(car.EngineRpm(beforeMps, gears.OverallRatio[from]), ratio);
        double radius = car.StaticRadiusM * (1 + (car.GrowthPerMps2 * afterMps * afterMps));
        double engineKg = car.EngineInertiaKgM2 * ratio * ratio * gears.Efficiency[from + 1] / (radius * radius);
        double carKg = car.MassKg + (car.WheelInertiaKgM2 / (radius * radius));
        return ((engineKg * engineMps) + (carKg * afterMps)) / (engineKg + carKg);
    }
}
