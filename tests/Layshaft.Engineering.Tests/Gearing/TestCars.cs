using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

/// <summary>Invented cars and venues that the gearing tests share.</summary>
internal static class TestCars
{
    internal static AirState SeaLevel { get; } = AirState.Standard(Length.Zero).Require();

    internal static EngineCurve Curve(params (double Rpm, double Nm)[] points) => EngineCurve.Create(
        points.Select(p => new TorquePoint(RotationalSpeed.FromRevolutionsPerMinute(p.Rpm), Torque.FromNewtonMeters(p.Nm))).ToArray()).Require();

    internal static EngineCurve RaceEngine { get; } = Curve(
        (2500, 120), (3500, 145), (4500, 165), (5500, 178), (6500, 180), (7500, 170), (8200, 155));

    internal static Gear[] Gears(params double[] ratios) =>
        ratios.Select((ratio, i) => Gear.FromRatio($"{i + 1}", ratio).Require()).ToArray();

    internal static Drivetrain Train(ToothPair? drop = null, double finalDrive = 3.9) => Drivetrain.Create(
        Gears(2.40, 1.80, 1.44, 1.20, 1.00), drop, FinalDrive.FromRatio(finalDrive).Require()).Require();

    internal static VehicleSpec Spec { get; } = new()
    {
        Mass = Mass.FromKilograms(780),
        DragArea = Area.FromSquareMeters(0.62),
        DownforceArea = Area.FromSquareMeters(0.2),
        RollingCoefficient = 0.013,
        RollingDoublesAt = Speed.FromMetersPerSecond(44.73),
        DrivelineEfficiency = 0.92,
        WheelInertia = MassMomentOfInertia.FromKilogramSquareMeters(3.2),
        EngineInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.09),
        DrivenAxle = DrivenAxle.Rear,
        DrivenShare = 0.52,
        CentreOfGravityHeight = Length.FromMeters(0.42),
        Wheelbase = Length.FromMeters(2.4),
        Grip = 1.35,
        ShiftTime = Duration.FromMilliseconds(120),
    };

    internal static RollingTyre Tyre { get; } = RollingTyre.FromSize(
        TyreSize.Parse("205/50R15 86V").Require(), new RollingState { Slip = 0.03, Growth = 0.01 }).Require();

    internal static Car Car(Drivetrain? train = null, VehicleSpec? spec = null, EngineCurve? engine = null, RollingTyre? tyre = null, Conditions? day = null) =>
        Engineering.Gearing.Car.Create(
            Vehicle.Create(spec ?? Spec).Require(),
            engine ?? RaceEngine,
            train ?? Train(),
            tyre ?? Tyre,
            day ?? new Conditions(SeaLevel)).Require();

    internal static Straight Straight(string name, double lengthM, double startMps, double endMps, double grade = 0, double? minimumMps = null) => new()
    {
        Name = name,
        Length = Length.FromMeters(lengthM),
        StartSpeed = Speed.FromMetersPerSecond(startMps),
        EndSpeed = Speed.FromMetersPerSecond(endMps),
        Braking = Acceleration.FromMetersPerSecondSquared(11),
        Grade = grade,
        CornerMinimum = minimumMps is { } minimum ? Speed.FromMetersPerSecond(minimum) : null,
    };

    internal static Venue Circuit { get; } = Venue.Create("Twelve Acre", Enumerable.Range(0, 14).Select(i => Straight(
        $"straight {i + 1}", 150 + (97 * i % 700), 18 + (7 * i % 23), 17 + (5 * i % 21), ((i % 5) - 2) * 0.015, 16 + (7 * i % 23))).ToArray()).Require();
}
