using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Gearing;

/// <summary>
/// Engine speed against road speed, one line per gear: the fan of a gear set. The path of a full-throttle run, up a
/// gear and down to the next, is drawn heavier, with the engine speed after each shift.
/// </summary>
public static class SpeedPerGearChart
{
    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No gears, points that do not rise, a number that is not finite.</exception>
    public static RawHtml Draw(SpeedPerGearInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Gears is null || input.Gears.Count == 0)
        {
            throw new ArgumentException("The chart needs at least one gear.", nameof(input));
        }

        var gears = input.Gears.Select(g => g with { Points = Polyline.Checked(g.Points, g.Label) }).ToList();
        var height = size == ChartSize.Wide ? 430.0 : 310.0;
        return ChartSheet.Picture(input.Frame, size, height, svg =>
        {
            var points = gears.SelectMany(g => g.Points).ToList();
            var fastest = Math.Max(points.Max(p => p.X), input.TopSpeed?.Value ?? 0);
            var highest = Math.Max(points.Max(p => p.Y), input.EngineLimit.Value);
            var plot = Plot.Rule(svg, new PlotRequest(size, height, input.Speed, 0, fastest * 1.04, input.EngineSpeed, 0, highest * 1.14)
            {
                SecondX = input.SecondSpeed,
            });

            foreach (var gear in gears)
            {
                svg.Path("line thin", plot.Path(gear.Points));
            }

            DrawLimit(svg, plot, input.EngineLimit);
            DrawTopSpeed(svg, plot, input.TopSpeed, gears.Find(g => g.UpshiftSpeed is null) ?? gears[^1]);
            DrawRun(svg, plot, gears, input, size);
            LabelGears(svg, plot, gears);
        });
    }

    private static void DrawLimit(SvgWriter svg, Plot plot, LevelMark limit)
    {
        var y = plot.Y.At(limit.Value);
        svg.Line("limit", plot.Left, y, plot.Right, y);
        svg.Label("label limit-label", plot.Left + 4, y - 20, limit.Label);
    }

    private static void DrawTopSpeed(SvgWriter svg, Plot plot, LevelMark? top, GearLine kept)
    {
        if (top is null)
        {
            return;
        }

        var x = plot.X.At(top.Value);
        var y = plot.Y.At(Polyline.At(kept.Points, top.Value));
        svg.Line("marker-line", x, plot.Bottom, x, y);
        Marks.Draw(svg, "mark mark-accent", 3, x, y, 4.5);
        svg.Label("label strong", x - 6, plot.Bottom - 10, top.Label, Anchor.End);
    }

    private static void DrawRun(SvgWriter svg, Plot plot, List<GearLine> gears, SpeedPerGearInput input, ChartSize size)
    {
        List<ChartPoint> run = [];
        List<(ChartPoint Value, ChartPoint Place)> landings = [];
        var from = gears[0].Points[0].X;
        for (var i = 0; i < gears.Count && from < gears[i].Points[^1].X; i++)
        {
            var kept = i == gears.Count - 1 || gears[i].UpshiftSpeed is null;
            var to = gears[i].UpshiftSpeed ?? input.TopSpeed?.Value ?? gears[i].Points[^1].X;
            if (to <= from)
            {
                break;
            }

            if (i > 0)
            {
                ChartPoint landed = new(from, Polyline.At(gears[i].Points, from));
                landings.Add((landed with { Y = gears[i - 1].Lands ?? landed.Y }, plot.At(landed)));
            }

            run.AddRange(Polyline.Between(gears[i].Points, from, to));
            from = to;
            if (kept)
            {
                break;
            }
        }

        svg.Path("line run", plot.Path(run));
        foreach (var (value, place) in landings)
        {
            svg.Circle("mark", place.X, place.Y, 3);
            if (size == ChartSize.Wide)
            {
                svg.Label("label quiet", place.X + 6, place.Y + 14, input.EngineSpeed.Format(Math.Round(value.Y)));
            }
        }
    }

    private static void LabelGears(SvgWriter svg, Plot plot, List<GearLine> gears)
    {
        var ends = gears.Select(g => plot.At(g.Points[^1])).ToList();
        var centres = LabelSpread.Apart(
            [.. ends.Select(e => e.X)], [.. gears.Select(g => TextWidth.Of(g.Label) + 8)], plot.Left, plot.Right + 8);
        for (var i = 0; i < gears.Count; i++)
        {
            Marks.Draw(svg, "mark mark-solid", 0, ends[i].X, ends[i].Y, 2);
            svg.Label("label strong", centres[i], ends[i].Y - 6, gears[i].Label, Anchor.Middle);
        }
    }
}
