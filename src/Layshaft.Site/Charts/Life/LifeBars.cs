using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Life;

/// <summary>Each part's service from fitted to renewed, row by row, over hours or seasons.</summary>
public static class LifeBars
{
    private const double Bar = 14;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No parts, a span that ends before it starts, or a number that is not finite.</exception>
    public static RawHtml Draw(LifeBarsInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Parts is null || input.Parts.Count == 0 || input.Parts.SelectMany(p => p.Spans).Any(s => !(s.To >= s.From)))
        {
            throw new ArgumentException("The chart needs at least one part, and no span that ends before it starts.", nameof(input));
        }

        var rows = Rows.Lay(size, [.. input.Parts.Select(p => p.Name)], 2, Bar, 2);
        Scale scale = new(input.From, input.To, rows.BarLeft, ChartSheet.Width(size) - 14);
        var axis = rows.Bottom + (string.IsNullOrEmpty(input.AxisName) ? 24 : BaseLine.Height);
        var key = LifeKey.Lay(input, ChartSheet.Width(size), axis + 8);
        return ChartSheet.Picture(input.Frame, size, key.Bottom, svg =>
        {
            BaseLine.Ticks(svg, scale, 2, rows.Bottom, input.Ticks);
            if (!string.IsNullOrEmpty(input.AxisName))
            {
                svg.Label("axis-name", scale.End, rows.Bottom + 36, input.AxisName, Anchor.End);
            }

            for (var i = 0; i < input.Parts.Count; i++)
            {
                Rows.Name(svg, rows.All[i]);
                foreach (var span in input.Parts[i].Spans)
                {
                    DrawSpan(svg, scale, span, rows.All[i].BarMiddle);
                }
            }

            key.Draw(svg);
        });
    }

    private static void DrawSpan(SvgWriter svg, Scale scale, BarSpan span, double y)
    {
        var (start, end) = (scale.At(Math.Max(span.From, scale.From)), scale.At(Math.Min(span.To, scale.To)));
        svg.Rect(span.End == BarEnd.Running ? "bar bar-open" : "bar", start, y - (Bar / 2), end - start, Bar);
        if (!string.IsNullOrEmpty(span.Label) && TextWidth.Of(span.Label) + 22 < end - start)
        {
            svg.Label("bar-text", (start + end) / 2, y + 4.5, span.Label, Anchor.Middle);
        }

        LifeMark.Draw(svg, span.Start, start, y);
        LifeMark.Draw(svg, span.End, end, y);
    }
}
