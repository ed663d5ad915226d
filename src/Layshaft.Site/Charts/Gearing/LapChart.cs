using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Gearing;

/// <summary>A lap at a glance: speed above, the gear between, engine speed below, over one axis of distance.</summary>
public static class LapChart
{
    private const double SpeedTop = 44;
    private const double SpeedBottom = 196;
    private const double StripTop = 206;
    private const double StripHeight = 20;
    private const double EngineTop = 256;
    private const double EngineBottom = 376;
    private const double Height = 414;
    private const double Digit = 9;
    private const double LastTick = 16;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No length, too few points, distances that fall, a number that is not finite.</exception>
    public static RawHtml Draw(LapChartInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        Check(input.Speeds);
        foreach (var gear in input.Gears)
        {
            Check(gear.EngineSpeeds);
        }

        var most = size == ChartSize.Wide ? 8 : 4;
        var speedTicks = NiceTicks.Between(0, input.Speeds.Max(p => p.Y) * 1.08, 4);
        var lowest = input.Gears.SelectMany(g => g.EngineSpeeds).Select(p => p.Y).Append(input.EngineLimit.Value * 0.6).Min();
        var engineTicks = NiceTicks.Between(lowest, input.EngineLimit.Value * 1.06, 4);
        var left = Math.Ceiling(TextWidth.Widest(input.Speed.Labels(speedTicks).Concat(input.EngineSpeed.Labels(engineTicks)))) + 8;
        Scale x = new(0, input.Length, left, ChartSheet.Width(size) - 10);
        Scale speed = new(0, input.Speeds.Max(p => p.Y) * 1.08, SpeedBottom, SpeedTop);
        Scale engine = new(lowest, input.EngineLimit.Value * 1.06, EngineBottom, EngineTop);
        return ChartSheet.Picture(input.Frame, size, Height, svg =>
        {
            Field(svg, x, speed, input.Speed, speedTicks);
            Field(svg, x, engine, input.EngineSpeed, engineTicks);
            svg.Label("axis-name", 1, 13, input.Speed.Name);
            svg.Label("axis-name", 1, EngineTop - 10, input.EngineSpeed.Name);
            var ticks = NiceTicks.Between(0, input.Length, most);
            foreach (var (at, label) in ticks.Zip(input.Distance.Labels(ticks)))
            {
                svg.Line("axis", x.At(at), EngineBottom, x.At(at), EngineBottom + 4);
                svg.Label("tick", x.At(at), EngineBottom + 17, label, at == 0 ? Anchor.Start : x.At(at) > x.End - LastTick ? Anchor.End : Anchor.Middle);
            }

            svg.Label("axis-name", x.End, EngineBottom + 34, input.Distance.Name, Anchor.End);
            foreach (var corner in input.Corners)
            {
                svg.Line("marker-line", x.At(corner.At), SpeedTop, x.At(corner.At), EngineBottom);
                svg.Label("label strong", x.At(corner.At), SpeedTop - 8, corner.Label, Anchor.Middle);
            }

            svg.Line("limit", x.Start, engine.At(input.EngineLimit.Value), x.End, engine.At(input.EngineLimit.Value));
            svg.Label("label limit-label", x.End, engine.At(input.EngineLimit.Value) - 5, input.EngineLimit.Label, Anchor.End);
            svg.Path("line run", PathData.Through(input.Speeds.Select(p => new ChartPoint(x.At(p.X), speed.At(p.Y)))));
            foreach (var gear in input.Gears)
            {
                svg.Path("line run", PathData.Through(gear.EngineSpeeds.Select(p => new ChartPoint(x.At(p.X), engine.At(p.Y)))));
                Strip(svg, x.At(gear.EngineSpeeds[0].X), x.At(gear.EngineSpeeds[^1].X), gear.Label);
            }
        });
    }

    private static void Field(SvgWriter svg, Scale x, Scale y, Axis axis, IReadOnlyList<double> ticks)
    {
        foreach (var (at, label) in ticks.Zip(axis.Labels(ticks)))
        {
            svg.Line("grid", x.Start, y.At(at), x.End, y.At(at));
            svg.Label("tick", x.Start - 5, y.At(at) + 4.5, label, Anchor.End);
        }

        svg.Path("axis", new PathData().Move(x.Start, y.End).To(x.Start, y.Start).To(x.End, y.Start).ToString());
    }

    private static void Strip(SvgWriter svg, double from, double to, string label)
    {
        svg.Rect("bar", from, StripTop, to - from, StripHeight);
        if (to - from > Digit)
        {
            svg.Label("strong", (from + to) / 2, StripTop + 14.5, label, Anchor.Middle);
        }
    }

    private static void Check(IReadOnlyList<ChartPoint> points)
    {
        if (points.Count < 2 || points.Zip(points.Skip(1)).Any(p => p.Second.X < p.First.X))
        {
            throw new ArgumentException("A line along the lap needs at least two points whose distance does not fall.", nameof(points));
        }
    }
}
