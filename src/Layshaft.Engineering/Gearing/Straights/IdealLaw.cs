namespace Layshaft.Engineering.Gearing;

/// <summary>
/// The same engine with an infinitely variable transmission: its greatest power at every speed, the same grip and
/// efficiency, no shift. No gearing of this car can accelerate harder at any speed.
/// </summary>
/// <remarks>
/// The engine runs at one speed, so its inertia does not slow the car. Where the resistance is greater than the drive, the
/// heaviest equivalent mass of the real gearings is taken instead, since that slows least. The slip is that of the longest
/// gear, the efficiency that of the best.
/// </remarks>
internal readonly struct IdealLaw(CarModel car, RoadLoad road, IdealGearing ideal) : IAccelerationLaw
{
    private readonly double _powerWatts = car.Car.Engine.PeakPowerWatts * car.TorqueFactor * ideal.Efficiency * (1 - car.SlipIn(ideal.LeastRatio));

    private readonly double _heaviestKgM2 =
        car.WheelInertiaKgM2 + (car.EngineInertiaKgM2 * ideal.GreatestRatio * ideal.GreatestRatio * ideal.Efficiency);

    public double At(double speedMps) => At(speedMps, out _);

    public double At(double speedMps, out bool isGripped)
    {
        double speed = Math.Max(speedMps, 1e-3);
        double radius = car.StaticRadiusM * (1 + (car.GrowthPerMps2 * speed * speed));
        double perRadius2 = 1 / (radius * radius);
        double resistance = road.ResistanceN(speed, out double grip);
        double byEngine = NetAcceleration((_powerWatts / speed) - resistance, car.WheelInertiaKgM2, perRadius2);
        double byGrip = NetAcceleration(grip - resistance, car.UndrivenInertiaKgM2, perRadius2);
        isGripped = byGrip < byEngine;
        return Math.Min(byEngine, byGrip);
    }

    public double? NextBend(double speedMps, bool isRising) => null;

    private double NetAcceleration(double force, double inertiaKgM2, double perRadius2) =>
        force / (car.MassKg + ((force >= 0 ? inertiaKgM2 : _heaviestKgM2) * perRadius2));
}
