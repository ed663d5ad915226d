namespace Layshaft.Engineering.Gearing;

/// <summary>Full throttle in one gear.</summary>
/// <remarks>
/// Wheel force T·i·η/r; equivalent mass m + (I_wheels + I_engine·i²·η)/r² (Yu, Automobile Theory; Gillespie, ch. 2). When
/// that asks more of the contact than its grip, the grip decides and the driven wheels' inertia drops out. While the clutch slips
/// the engine turns at one speed and gives its torque there, without inertia.
/// </remarks>
internal readonly struct DriveLaw : IAccelerationLaw
{
    private readonly CarModel _car;
    private readonly RoadLoad _road;
    private readonly double _overallRatio;
    private readonly double _rpmPerMps;
    private readonly double _forcePerTorque;
    private readonly double _rotatingKgM2;
    private readonly double _launchRpm; // 0 once the clutch has closed

    internal DriveLaw(CarModel car, RoadLoad road, double overallRatio, double efficiency, bool isClutchSlipping = false, double launchRpm = 0)
    {
        _launchRpm = launchRpm;
        _car = car;
        _road = road;
        _overallRatio = overallRatio;
        _rpmPerMps = 60 * overallRatio / (2 * Math.PI * car.StaticRadiusM * (1 - car.SlipIn(overallRatio)));
        _forcePerTorque = car.TorqueFactor * overallRatio * efficiency;
        _rotatingKgM2 = car.WheelInertiaKgM2
            + (isClutchSlipping ? 0 : car.EngineInertiaKgM2 * overallRatio * overallRatio * efficiency);
    }

    internal double OverallRatio => _overallRatio;

    public double At(double speedMps) => At(speedMps, out _);

    public double At(double speedMps, out bool isGripped)
    {
        double speed = Math.Max(speedMps, 0);
        CarModel car = _car;
        double grown = 1 + (car.GrowthPerMps2 * speed * speed);
        double radius = car.StaticRadiusM * grown;
        double force = _forcePerTorque * car.Spline.TorqueNm(Math.Max(speed * _rpmPerMps / grown, _launchRpm)) / radius;
        double resistance = _road.ResistanceN(speed, out double grip);
        double perRadius2 = 1 / (radius * radius);
        double byEngine = (force - resistance) / (car.MassKg + (_rotatingKgM2 * perRadius2));

        // Less force on more inertia is less acceleration: no need to work out what the grip would allow.
        isGripped = false;
        if (force <= grip && force >= resistance)
        {
            return byEngine;
        }

        double byGrip = (grip - resistance) / (car.MassKg + (car.UndrivenInertiaKgM2 * perRadius2));
        isGripped = byGrip < byEngine;
        return Math.Min(byEngine, byGrip);
    }

    public double? NextBend(double speedMps, bool isRising)
    {
        double growth = _car.GrowthPerMps2;
        if (_launchRpm > 0)
        {
            return null; // the engine turns at one speed
        }

        if (_car.Spline.NextKnot(speedMps * _rpmPerMps / (1 + (growth * speedMps * speedMps)), isRising) is not { } rpm)
        {
            return null;
        }

        // Solved for the speed; above the engine speed that a growing tyre lets it reach there is none.
        double root = (_rpmPerMps * _rpmPerMps) - (4 * growth * rpm * rpm);
        return root > 0 ? 2 * rpm / (_rpmPerMps + Math.Sqrt(root)) : null;
    }

    /// <summary>Force at the contact of the driven wheels that the engine can give at a steady speed, in N.</summary>
    internal double WheelForceN(double speedMps)
    {
        double grown = 1 + (_car.GrowthPerMps2 * speedMps * speedMps);
        double force = _forcePerTorque * _car.Spline.TorqueNm(speedMps * _rpmPerMps / grown) / (_car.StaticRadiusM * grown);
        _road.ResistanceN(speedMps, out double grip);
        return Math.Min(force, grip);
    }
}
