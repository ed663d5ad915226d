namespace Layshaft.Engineering.Gearing;

/// <summary>A car's figures in SI, ready for the inner loops; the drivetrain is apart from it.</summary>
internal sealed class CarModel
{
    private readonly double _gripSharePerRatio;

    internal CarModel(Car car)
    {
        VehicleSpec spec = car.Vehicle.Spec;
        Car = car;
        Spline = car.Engine.Spline;
        MassKg = spec.Mass.Kilograms;
        Efficiency = spec is { MeshEfficiency: { } mesh, AxleEfficiency: { } axle } ? axle * mesh * mesh : spec.DrivelineEfficiency;
        WheelInertiaKgM2 = spec.WheelInertia.KilogramSquareMeters;
        EngineInertiaKgM2 = spec.EngineInertia.KilogramSquareMeters;
        UndrivenInertiaKgM2 = spec.DrivenAxle == DrivenAxle.Both ? 0 : WheelInertiaKgM2 / 2;
        double halfDensity = 0.5 * car.Conditions.Air.DensityKgPerM3;
        DragPerMps2 = halfDensity * spec.DragArea.SquareMeters * car.Conditions.DragFactor;
        DownforcePerMps2 = halfDensity * spec.DownforceArea.SquareMeters;
        RollingCoefficient = spec.RollingCoefficient;
        RollingPerMps = spec.RollingDoublesAt is { } doubles ? 1 / doubles.MetersPerSecond : 0;
        ShiftTimeS = spec.ShiftTime.Seconds;
        TorqueFactor = car.Conditions.TorqueFactor;
        StaticRadiusM = car.Tyre.StaticCircumferenceM / (2 * Math.PI);
        GrowthPerMps2 = car.Tyre.GrowthPerMps2;
        Slip = car.Tyre.State.Slip;

        // Gillespie, Fundamentals of Vehicle Dynamics, traction-limited acceleration: the load that passes to the rear is
        // (force at the contact − rolling resistance)·h/L when the drag acts at about the height of the centre of gravity.
        double transfer = spec.CentreOfGravityHeight.Meters / spec.Wheelbase.Meters;
        TransferToDriven = spec.DrivenAxle switch { DrivenAxle.Rear => transfer, DrivenAxle.Front => -transfer, _ => 0 };
        DrivenShare = spec.DrivenAxle == DrivenAxle.Both ? 1 : spec.DrivenShare;
        DownforceDrivenShare = spec.DrivenAxle == DrivenAxle.Both ? 1 : spec.DownforceDrivenShare;
        Grip = spec.Grip;
        double divisor = 1 - (Grip * TransferToDriven);

        // At a divisor near nothing the front wheels leave the ground: the whole weight is on the driven wheels.
        GripScale = divisor > 1e-6 ? Grip / divisor : double.MaxValue;
        double weightN = MassKg * StandardAtmosphere.GravityMps2;
        double gripN = Math.Min(GripScale * weightN * DrivenShare, Grip * weightN);
        double torqueNm = car.Engine.PeakPowerWatts / (car.Engine.PeakPowerRpm * EngineCurve.RadPerSecondPerRpm);
        _gripSharePerRatio = torqueNm * TorqueFactor * Efficiency / (StaticRadiusM * gripN);
    }

    internal Car Car { get; }

    internal TorqueSpline Spline { get; }

    internal double MassKg { get; }

    /// <summary>Efficiency of the driveline as a whole; that of each gear is <see cref="EfficiencyIn"/>.</summary>
    internal double Efficiency { get; }

    internal double WheelInertiaKgM2 { get; }

    internal double EngineInertiaKgM2 { get; }

    internal double UndrivenInertiaKgM2 { get; }

    internal double DragPerMps2 { get; }

    internal double DownforcePerMps2 { get; }

    internal double RollingCoefficient { get; }

    internal double RollingPerMps { get; }

    internal double ShiftTimeS { get; }

    internal double TorqueFactor { get; }

    internal double StaticRadiusM { get; }

    internal double GrowthPerMps2 { get; }

    internal double Slip { get; }

    /// <summary>
    /// Slip in a gear: it follows the force, so it is that at the limit of grip times the share of the grip that the engine's torque
    /// at its greatest power asks for. Within a gear the force at full throttle changes little.
    /// </summary>
    internal double SlipIn(double overallRatio) => Slip * Math.Min(1, _gripSharePerRatio * overallRatio);

    internal double TransferToDriven { get; }

    internal double DrivenShare { get; }

    internal double DownforceDrivenShare { get; }

    internal double Grip { get; }

    internal double GripScale { get; }

    /// <summary>Efficiency of the driveline in a gear, numbered from 1.</summary>
    internal double EfficiencyIn(Drivetrain train, int gear) => MeshLoss.Efficiency(Car.Vehicle.Spec, train, gear);

    /// <summary>Engine speed at a road speed, in rpm, for an overall ratio.</summary>
    internal double EngineRpm(double speedMps, double overallRatio) =>
        60 * overallRatio * Car.Tyre.WheelTurnsPerSecond(speedMps, SlipIn(overallRatio));

    /// <summary>Road speed at an engine speed, for an overall ratio.</summary>
    internal double SpeedMps(double rpm, double overallRatio) =>
        Car.Tyre.SpeedMps(rpm / (60 * overallRatio), SlipIn(overallRatio));
}
