using Layshaft.Engineering.Gearing;
using Layshaft.Engineering.Tests.Gearing;
using Layshaft.Engineering.Traces;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Traces;

/// <summary>The car of the made-up laps, and how its trace is worked out.</summary>
internal static class TraceCars
{
    internal const double CircumferenceM = 1.9;

    internal static EngineCurve Engine { get; } = EngineCurve.Create(
        [
            .. new[] { (2500, 120), (3500, 145), (4500, 165), (5500, 178), (6500, 180), (7500, 170), (8200, 155) }
                .Select(p => new TorquePoint(RotationalSpeed.FromRevolutionsPerMinute(p.Item1), Torque.FromNewtonMeters(p.Item2))),
        ],
        RotationalSpeed.FromRevolutionsPerMinute(8200)).Require();

    internal static ToothPair Drop { get; } = new(23, 29);

    internal static Drivetrain Train { get; } = Drivetrain.Create(
        [
            .. new[] { (16, 38), (19, 34), (22, 32), (25, 30), (27, 28), (28, 26) }
                .Select((teeth, i) => Gear.FromTeeth($"{i + 1}", new ToothPair(teeth.Item1, teeth.Item2))),
        ],
        Drop,
        FinalDrive.FromTeeth(new ToothPair(11, 35))).Require();

    internal static Car Car { get; } = TestCars.Car(Train, engine: Engine, tyre: RollingTyre.FromMeasured(Length.FromMeters(CircumferenceM)).Require());

    internal static DogInertias Inertias { get; } = new(MassMomentOfInertia.FromKilogramSquareMeters(0.09));

    internal static TraceQuestion Question { get; } = new(Car, SpeedSource.FreeWheels, null, Inertias);

    internal static double[] Overall(Drivetrain train) => [.. Enumerable.Range(1, train.Gears.Count).Select(train.OverallRatio)];

    internal static MadeUpDrive Drive { get; } = new()
    {
        Overall = Overall(Train),
        Corners = [new(23.5, 27, 620), new(31, 34, 330), new(17, 21, 840), new(38, 41, 450), new(26, 30, 280)],
        Pull = (speed, _) => Math.Min(7.5, 230 / Math.Max(speed, 1)),
    };

    internal static TraceFigures Analyse(IEnumerable<TraceSample> rows, TraceQuestion? question = null)
    {
        var analyser = new TraceAnalyser(question ?? Question);
        foreach (TraceSample row in rows)
        {
            analyser.Add(row);
        }

        return analyser.Finish();
    }
}
