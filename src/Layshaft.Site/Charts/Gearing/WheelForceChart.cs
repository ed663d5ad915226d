using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Gearing;

/// <summary>
/// Wheel force in each gear against road speed, with total drag and the tyres' limit. Where the last curve meets drag
/// the car is at its top speed; where one gear's curve falls below the next one's, the shift is best.
/// </summary>
public static class WheelForceChart
{
    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No gears, points that do not rise, a number that is not finite.</exception>
    public static RawHtml Draw(WheelForceInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Gears is null || input.Gears.Count == 0)
        {
            throw new ArgumentException("The chart needs at least one gear.", nameof(input));
        }

        NamedLine[] lines = [.. input.Gears, .. new[] { input.Drag, input.Traction }.OfType<NamedLine>()];
        foreach (var line in lines)
        {
            Polyline.Checked(line.Points, line.Label);
        }

        var height = size == ChartSize.Wide ? 430.0 : 400.0;
        return ChartSheet.Picture(input.Frame, size, height, svg =>
        {
            var points = lines.SelectMany(l => l.Points).ToList();
            var plot = Plot.Rule(svg, new PlotRequest(
                size, height, input.Speed, 0, points.Max(p => p.X) * 1.02, input.Force, 0, points.Max(p => p.Y) * 1.1)
            {
                SecondX = input.SecondSpeed,
            });

            DrawTraction(svg, plot, input.Traction);
            for (var i = 0; i < input.Gears.Count; i++)
            {
                svg.Path("line", plot.Path(input.Gears[i].Points), Marks.Dash(i));
            }

            DrawDrag(svg, plot, input.Drag);
            LabelGears(svg, plot, input.Gears);
            DrawCrossing(svg, plot, input.Crossing);
        });
    }

    private static void DrawTraction(SvgWriter svg, Plot plot, NamedLine? traction)
    {
        if (traction is null)
        {
            return;
        }

        svg.Path("limit", plot.Path(traction.Points));
        var end = plot.At(traction.Points[^1]);
        svg.Label("label limit-label", plot.Right - 2, end.Y - 6, traction.Label, Anchor.End);
    }

    private static void DrawDrag(SvgWriter svg, Plot plot, NamedLine? drag)
    {
        if (drag is null)
        {
            return;
        }

        svg.Path("line drag", plot.Path(drag.Points));

        // Above the flat start of its line: the gears' curves are far above it there.
        var reach = plot.Left + 6 + TextWidth.Of(drag.Label);
        var at = drag.Points.Select(plot.At).Where(p => p.X <= reach).Append(plot.At(drag.Points[0])).Min(p => p.Y);
        svg.Label("label strong", plot.Left + 6, at - 9, drag.Label);
    }

    private static void LabelGears(SvgWriter svg, Plot plot, IReadOnlyList<NamedLine> gears)
    {
        var peaks = gears.Select(g => plot.At(g.Points.MaxBy(p => p.Y))).ToList();
        var centres = LabelSpread.Apart(
            [.. peaks.Select(p => p.X)], [.. gears.Select(g => TextWidth.Of(g.Label) + 6)], plot.Left, plot.Right);
        for (var i = 0; i < gears.Count; i++)
        {
            Marks.Draw(svg, "mark", i, peaks[i].X, peaks[i].Y, 3.2);
            svg.Label("label strong", centres[i], peaks[i].Y - 8, gears[i].Label, Anchor.Middle);
        }
    }

    private static void DrawCrossing(SvgWriter svg, Plot plot, NamedPoint? crossing)
    {
        if (crossing is null)
        {
            return;
        }

        var at = plot.At(crossing.Point);
        svg.Line("marker-line", at.X, at.Y, at.X, plot.Bottom);
        svg.Circle("mark mark-accent", at.X, at.Y, 5);
        svg.Line("whisker", at.X - 8, at.Y, at.X + 8, at.Y);
        svg.Line("whisker", at.X, at.Y - 8, at.X, at.Y + 8);
        svg.Label("label strong", Math.Max(at.X - 6, plot.Left + TextWidth.Of(crossing.Label)), plot.Bottom - 10, crossing.Label, Anchor.End);
    }
}
