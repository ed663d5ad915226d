using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Life;

/// <summary>
/// One part's measurements over its hours: fitted line, prediction band, limit, and where the limit will be met.
/// </summary>
public static class TrendChart
{
    // So far beyond readings, new size and limit the axis goes, in parts of their range: a wide band must not flatten the readings.
    private const double MostBeyond = 0.7;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No points, lines whose points do not rise, a number that is not finite.</exception>
    public static RawHtml Draw(TrendInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Points is null || input.Points.Count == 0 || input.Points.Any(p => p.Uncertainty < 0))
        {
            throw new ArgumentException("The chart needs at least one point, and no uncertainty below 0.", nameof(input));
        }

        List<ChartPoint> lines = [];
        foreach (var (points, what) in new[] { (input.Fit?.Points, "fit"), (input.Band?.Upper, "band"), (input.Band?.Lower, "band") })
        {
            lines.AddRange(points is null ? [] : Polyline.Checked(points, what));
        }

        var height = size == ChartSize.Wide ? 400.0 : 370.0;
        return ChartSheet.Picture(input.Frame, size, height, svg =>
        {
            var plot = Plot.Rule(svg, Request(input, lines, size, height));
            DrawBand(svg, plot, input.Band);
            DrawLimit(svg, plot, input.Limit);
            DrawNew(svg, plot, input.AsNew);
            if (input.Fit is not null)
            {
                svg.Path("line run", PathData.Through(Within(plot, input.Fit.Points)));
            }

            foreach (var point in input.Points)
            {
                DrawPoint(svg, plot, point);
            }

            DrawCrossing(svg, plot, input);
        });
    }

    private static PlotRequest Request(TrendInput input, List<ChartPoint> lines, ChartSize size, double height)
    {
        double[] xs = [0, .. lines.Select(p => p.X), .. input.Points.Select(p => p.X), input.Crossing?.Value ?? 0, input.Crossing?.Upper ?? 0];
        double[] sizes = [.. input.Points.SelectMany(p => new[] { p.Y - p.Uncertainty, p.Y + p.Uncertainty }), input.Limit.Value, input.AsNew?.Value ?? input.Limit.Value];
        var beyond = (sizes.Max() - sizes.Min()) * MostBeyond;
        double[] ys = [.. sizes, .. lines.Select(p => Math.Clamp(p.Y, sizes.Min() - beyond, sizes.Max() + beyond))];
        var (low, high) = (ys.Min(), ys.Max());
        var room = high > low ? (high - low) * 0.12 : 1;
        // No room below a size of none.
        var bottom = low - (room * 1.6);
        return new PlotRequest(size, height, input.X, xs.Min(), Math.Max(xs.Max(), xs.Min() + 1e-6) * 1.03, input.Y, low >= 0 ? Math.Max(0, bottom) : bottom, high + (room * 1.3));
    }

    private static void DrawBand(SvgWriter svg, Plot plot, Band? band)
    {
        if (band is null)
        {
            return;
        }

        svg.Path("band", PathData.Through(Within(plot, band.Upper).Concat(Within(plot, band.Lower).Reverse())) + "Z");
        svg.Path("band-edge", PathData.Through(Within(plot, band.Upper)));
        svg.Path("band-edge", PathData.Through(Within(plot, band.Lower)));
    }

    // What leaves the field runs along its edge.
    private static IEnumerable<ChartPoint> Within(Plot plot, IEnumerable<ChartPoint> line) =>
        line.Select(plot.At).Select(p => p with { Y = Math.Clamp(p.Y, plot.Top, plot.Bottom) });

    /// <summary>Named at the left: a part starts far from its limit, so nothing else is there.</summary>
    private static void DrawLimit(SvgWriter svg, Plot plot, LevelMark limit)
    {
        var y = plot.Y.At(limit.Value);
        svg.Line("limit", plot.Left, y, plot.Right, y);
        svg.Label("label limit-label", plot.Left + 6, y - 6, limit.Label);
    }

    private static void DrawNew(SvgWriter svg, Plot plot, LevelMark? level)
    {
        if (level is null)
        {
            return;
        }

        var y = plot.Y.At(level.Value);
        svg.Line("level", plot.Left, y, plot.Right, y);
        svg.Label("label quiet", plot.Right - 2, y - 6, level.Label, Anchor.End);
    }

    private static void DrawPoint(SvgWriter svg, Plot plot, MeasuredPoint point)
    {
        var at = plot.At(new ChartPoint(point.X, point.Y));
        if (point.Uncertainty > 0)
        {
            Marks.Whisker(svg, at.X, plot.Y.At(point.Y - point.Uncertainty), at.X, plot.Y.At(point.Y + point.Uncertainty));
        }

        svg.Circle("mark mark-solid", at.X, at.Y, 3.2);
    }

    private static void DrawCrossing(SvgWriter svg, Plot plot, TrendInput input)
    {
        if (input.Crossing is not { } crossing)
        {
            return;
        }

        var x = plot.X.At(crossing.Value);
        var y = plot.Y.At(input.Limit.Value);
        svg.Line("marker-line", x, y, x, plot.Bottom);
        if (crossing.Lower is not null && crossing.Upper is not null)
        {
            Marks.Whisker(svg, plot.X.At(crossing.Lower.Value), plot.Bottom - 9, plot.X.At(crossing.Upper.Value), plot.Bottom - 9);
        }

        Marks.Draw(svg, "mark mark-accent", 3, x, y, 4.5);
        var width = TextWidth.Of(crossing.Label);
        svg.Label("label strong", Math.Clamp(x, plot.Left + (width / 2) + 2, Math.Max(plot.Left + (width / 2) + 2, plot.Right - (width / 2))), plot.Bottom - 18, crossing.Label, Anchor.Middle);
    }
}
