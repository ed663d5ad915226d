using System.Globalization;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;

namespace Layshaft.Site.Tests.Charts;

/// <summary>Inputs that the chart tests share: an invented six-speed car.</summary>
internal static partial class Samples
{
    public const double EngineLimit = 8500;

    /// <summary>Road speed at the engine limit in each gear, km/h.</summary>
    public static readonly double[] SpeedAtLimit = [96, 128, 158, 187, 214, 240];

    public static ChartFrame Frame(string prefix, string title) => new(prefix, title, $"{title}, described in words.");

    public static string Whole(double value) => value.ToString("#,0", CultureInfo.InvariantCulture).Replace(',', '\u202F');

    public static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    public static SpeedPerGearInput SpeedPerGear() => new(
        Frame("fan", "Engine speed against road speed"),
        [.. SpeedAtLimit.Select((v, i) => new GearLine(
            (i + 1).ToString(CultureInfo.InvariantCulture), [new(0, 0), new(v, EngineLimit)], i < 5 ? v * 8200 / EngineLimit : null))],
        new Axis("road speed, km/h", Whole),
        new SecondAxis("mph", Whole, 1 / 1.609344),
        new Axis("engine speed, rpm", Whole),
        new LevelMark(EngineLimit, "engine limit 8 500 rpm"),
        new LevelMark(228, "top speed 228 km/h"));

    public static LapChartInput Lap()
    {
        // Two straights of 800 m with a corner of 100 m after each, in three gears.
        List<ChartPoint> speeds = [];
        List<LapGear> gears = [];
        foreach (var start in new[] { 0.0, 900.0 })
        {
            speeds.AddRange(Enumerable.Range(0, 13).Select(k => new ChartPoint(start + (k * 50), 90 + (110 * Math.Sqrt(k / 12.0)))));
            speeds.Add(new(start + 800, 80));
            gears.AddRange(Enumerable.Range(0, 3).Select(g => new LapGear(
                (g + 2).ToString(CultureInfo.InvariantCulture), [new(start + (g * 200), 6300), new(start + (g * 200) + 90, 7700), new(start + (g * 200) + 190, 8300)])));
        }

        speeds.Add(new(1800, 90));
        return new LapChartInput(
            Frame("lap", "Speed, gear and engine speed along the lap"),
            1800,
            speeds,
            gears,
            [new(800, "1"), new(1700, "2")],
            new Axis("distance, m", Whole),
            new Axis("road speed, km/h", Whole),
            new Axis("engine speed, rpm", Whole),
            new LevelMark(EngineLimit, "8 500 rpm"));
    }

    public static WheelForceInput WheelForce()
    {
        // A made-up torque curve, N·m over the share of the engine limit, with a wheel of 0.3 m.
        static double Torque(double share) => 260 - (420 * (share - 0.68) * (share - 0.68));
        static NamedLine Gear(double atLimit, int i)
        {
            var reduction = EngineLimit * Math.PI / 30 * 0.3 / (atLimit / 3.6);
            return new NamedLine(
                (i + 1).ToString(CultureInfo.InvariantCulture),
                [.. Enumerable.Range(0, 29).Select(k => 0.3 + (k * 0.025)).Select(s => new ChartPoint(atLimit * s, Torque(s) * reduction / 0.3))]);
        }

        static double Drag(double kmh) => 220 + (0.5 * 1.2 * 1.15 * (kmh / 3.6) * (kmh / 3.6));
        var sixth = Gear(SpeedAtLimit[^1], 5).Points;
        var top = Enumerable.Range(1800, 600).Select(v => v / 10.0).First(v => Drag(v) >= Drive(sixth, v));
        return new WheelForceInput(
            Frame("force", "Wheel force in each gear"),
            [.. SpeedAtLimit.Select(Gear)],
            new Axis("road speed, km/h", Whole),
            new SecondAxis("mph", Whole, 1 / 1.609344),
            new Axis("wheel force, N", Whole),
            new NamedLine("total drag", [.. Enumerable.Range(0, 26).Select(k => new ChartPoint(k * 10, Drag(k * 10)))]),
            new NamedLine("traction limit", [new(0, 7000), new(100, 7250), new(250, 8600)]),
            new NamedPoint($"drive = drag at {Whole(top)} km/h", new ChartPoint(top, Drag(top))));
    }

    private static double Drive(IReadOnlyList<ChartPoint> points, double x)
    {
        var next = points.First(p => p.X >= x);
        var last = points.Last(p => p.X < x);
        return last.Y + ((next.Y - last.Y) * (x - last.X) / (next.X - last.X));
    }
}
