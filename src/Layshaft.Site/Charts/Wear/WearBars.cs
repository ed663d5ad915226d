using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Wear;

/// <summary>
/// How much of its wear allowance each part has used, with the measurement's uncertainty, the two thresholds and the
/// grade. What lies beyond the threshold of renewal is drawn solid.
/// </summary>
public static class WearBars
{
    private const double BarHeight = 12;
    private const double Head = 26;

    // Half a tick's label stands past the end of the scale.
    private const double NarrowEnd = 20;

    /// <summary>A share beyond this is cut off with an arrow: the rest of the chart would shrink to nothing.</summary>
    private const double MostShown = 1.6;

    /// <summary>Draws the chart.</summary>
    /// <param name="input">What to draw.</param>
    /// <param name="size">For which width.</param>
    /// <exception cref="ArgumentNullException"><paramref name="input"/> is null.</exception>
    /// <exception cref="ArgumentException">No parts, or a number that is not finite.</exception>
    public static RawHtml Draw(WearBarsInput input, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (input.Parts is null || input.Parts.Count == 0)
        {
            throw new ArgumentException("The chart needs at least one part.", nameof(input));
        }

        var width = ChartSheet.Width(size);
        double[] values = [.. input.Parts.Select(p => TextWidth.Of(p.ValueText))];
        var rows = Rows.Lay(size, [.. input.Parts.Select(p => p.Name)], Head, BarHeight, 29, values);
        var right = size == ChartSize.Wide ? Math.Max(rows.BarLeft + 180, width - values.Max() - 12) : width - NarrowEnd;
        var largest = input.Parts.SelectMany(p => new[] { p.Share ?? 0, p.Upper ?? 0 }).Append(input.Renew.Value * 1.12).Max();
        Scale scale = new(0, Math.Min(largest, Math.Max(MostShown, input.Renew.Value * 1.12)), rows.BarLeft, right);
        return ChartSheet.Picture(input.Frame, size, rows.Bottom + BaseLine.Height, svg =>
        {
            BaseLine.Rule(svg, scale, Head - 4, rows.Bottom, input.Share);
            DrawThreshold(svg, scale, input, rows.Bottom);
            for (var i = 0; i < input.Parts.Count; i++)
            {
                DrawPart(svg, scale, input.Parts[i], rows.All[i], input.Renew.Value, size);
            }
        });
    }

    private static void DrawThreshold(SvgWriter svg, Scale scale, WearBarsInput input, double bottom)
    {
        LevelMark[] marks = [input.Watch, input.Renew];
        var centres = LabelSpread.Apart(
            [.. marks.Select(m => scale.At(m.Value))], [.. marks.Select(m => TextWidth.Of(m.Label) + 8)], scale.Start, scale.End + 14);
        for (var i = 0; i < marks.Length; i++)
        {
            var x = scale.At(marks[i].Value);
            svg.Line(i == 0 ? "marker-line" : "limit", x, Head - 6, x, bottom);
            svg.Label(i == 0 ? "label" : "label limit-label", centres[i], 13, marks[i].Label, Anchor.Middle);
        }
    }

    private static void DrawPart(SvgWriter svg, Scale scale, WearBar part, Row row, double renew, ChartSize size)
    {
        if (part.Grade is not null)
        {
            Marks.Grade(svg, part.Grade, 14, size == ChartSize.Wide ? row.BarMiddle : row.NameBaseline - 6, 9.5);
        }

        Rows.Name(svg, row);
        var wide = size == ChartSize.Wide;
        svg.Label("row-value", ChartSheet.Width(size) - 2, wide ? row.BarMiddle + 4.5 : row.ValueBaseline, part.ValueText, Anchor.End);
        if (part.Share is { } share)
        {
            DrawBar(svg, scale, part, share, row, renew);
        }
    }

    private static void DrawBar(SvgWriter svg, Scale scale, WearBar part, double share, Row row, double renew)
    {
        var y = row.BarMiddle - (BarHeight / 2);
        var inside = scale.At(Math.Clamp(share, 0, Math.Min(renew, scale.To)));
        var end = scale.At(Math.Clamp(share, 0, scale.To));
        svg.Rect("bar", scale.Start, y, inside - scale.Start, BarHeight);
        if (end > inside)
        {
            svg.Rect("bar-over", inside, y, end - inside, BarHeight);
        }

        if (share > scale.To)
        {
            svg.Path("mark-cut", new PathData().Move(end - 1, y - 3).To(end + 6, row.BarMiddle).To(end - 1, y + BarHeight + 3).Close().ToString());
        }
        else if (part.Lower is not null && part.Upper is not null)
        {
            Marks.Whisker(svg, scale.At(Math.Clamp(part.Lower.Value, 0, scale.To)), row.BarMiddle, scale.At(Math.Clamp(part.Upper.Value, 0, scale.To)), row.BarMiddle);
        }
    }
}
