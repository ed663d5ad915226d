using BenchmarkDotNet.Attributes;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Benchmarks;

/// <summary>Ranks 36 drop pairs × 5 final drives over a venue of 14 straights, on the planned day and on the usual changed ones.</summary>
[MemoryDiagnoser]
public class GearingRankingBenchmark
{
    private RankingQuestion _planned = null!;
    private RankingQuestion _withChanges = null!;

    [GlobalSetup]
    public void Setup()
    {
        _withChanges = Question();
        _planned = _withChanges with { Changes = [] };
    }

    [Benchmark(Baseline = true)]
    public GearingRanking PlannedDay() => GearingRanking.Rank(_planned).Require();

    [Benchmark]
    public GearingRanking WithChangedDays() => GearingRanking.Rank(_withChanges).Require();

    /// <summary>180 candidates on 14 straights.</summary>
    internal static RankingQuestion Question()
    {
        // Nine pairs on each of two centre distances (tooth sums 53 and 55), each both ways round.
        ToothPair[] pairs = new[] { 53, 55 }
            .SelectMany(sum => Enumerable.Range(18, 9).Select(driver => new ToothPair(driver, sum - driver)))
            .SelectMany(pair => new[] { pair, pair.Swapped })
            .ToArray();
        FinalDrive[] finals = new[] { 36, 37, 39, 41, 43 }.Select(crown => FinalDrive.FromTeeth(new ToothPair(10, crown))).ToArray();
        (double Rpm, double Nm)[] torque = [(2500, 120), (3500, 145), (4500, 165), (5500, 178), (6500, 180), (7500, 170), (8200, 155)];
        EngineCurve engine = EngineCurve.Create(torque.Select(point => new TorquePoint(
            RotationalSpeed.FromRevolutionsPerMinute(point.Rpm), Torque.FromNewtonMeters(point.Nm))).ToArray()).Require();
        Gear[] gears = new[] { 2.40, 1.80, 1.44, 1.20, 1.00 }.Select((ratio, i) => Gear.FromRatio($"{i + 1}", ratio).Require()).ToArray();
        Vehicle vehicle = Vehicle.Create(new VehicleSpec
        {
            Mass = Mass.FromKilograms(780),
            DragArea = Area.FromSquareMeters(0.62),
            DrivelineEfficiency = 0.92,
            WheelInertia = MassMomentOfInertia.FromKilogramSquareMeters(3.2),
            EngineInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.09),
            DrivenAxle = DrivenAxle.Rear,
            DrivenShare = 0.52,
            CentreOfGravityHeight = Length.FromMeters(0.42),
            Wheelbase = Length.FromMeters(2.4),
            Grip = 1.35,
            ShiftTime = Duration.FromMilliseconds(120),
        }).Require();
        Car car = Car.Create(
            vehicle,
            engine,
            Drivetrain.Create(gears, null, finals[0]).Require(),
            RollingTyre.FromSize(TyreSize.Parse("205/50R15 86V").Require()).Require(),
            new Conditions(AirState.Standard(Length.FromMeters(150)).Require(), PowerStandard.Iso1585)).Require();
        Venue venue = Venue.Create("Twelve Acre", Enumerable.Range(0, 14).Select(i => new Straight
        {
            Name = $"straight {i + 1}",
            Length = Length.FromMeters(150 + (97 * i % 700)),
            StartSpeed = Speed.FromMetersPerSecond(18 + (7 * i % 23)),
            EndSpeed = Speed.FromMetersPerSecond(17 + (5 * i % 21)),
            Grade = ((i % 5) - 2) * 0.015,
        }).ToArray()).Require();
        return new RankingQuestion(car, venue, new GearingStock(pairs, finals));
    }
}
