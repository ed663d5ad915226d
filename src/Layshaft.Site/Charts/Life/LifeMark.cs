using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Charts.Life;

/// <summary>The marks at the ends of a life bar, and their key.</summary>
internal static class LifeMark
{
    public static void Draw(SvgWriter svg, BarStart start, double x, double y)
    {
        if (start == BarStart.Fitted)
        {
            svg.Line("tick-heavy", x, y - 10, x, y + 10);
        }
        else
        {
            Arrow(svg, x, y, 1);
        }
    }

    public static void Draw(SvgWriter svg, BarEnd end, double x, double y)
    {
        switch (end)
        {
            case BarEnd.Running:
                svg.Path("pointer", new PathData().Move(x, y - 8).To(x + 10, y).To(x, y + 8).Close().ToString());
                break;
            case BarEnd.Renewed:
                svg.Rect("mark mark-solid", x - 10, y - 4, 8, 8);
                break;
            case BarEnd.MovedOut:
                Arrow(svg, x, y, -1);
                break;
            default:
                throw new ArgumentException("A span has an unknown end.", nameof(end));
        }
    }

    /// <summary>Across the bar, down into this unit or up out of it.</summary>
    private static void Arrow(SvgWriter svg, double x, double y, int down)
    {
        var head = y + (11 * down);
        svg.Path("mark-open", new PathData().Move(x, y - (11 * down)).To(x, head).Move(x - 5, head - (6 * down)).To(x, head).To(x + 5, head - (6 * down)).ToString());
    }
}

/// <summary>The key under the chart: only the marks that it uses, wrapped to the width.</summary>
internal sealed record LifeKey(IReadOnlyList<(Action<SvgWriter, double, double> Mark, string Words, double X, double Y)> Entries, double Bottom)
{
    private const double Row = 24;

    public static LifeKey Lay(LifeBarsInput input, double width, double top)
    {
        var spans = input.Parts.SelectMany(p => p.Spans).ToList();
        List<(Action<SvgWriter, double, double>, string, double, double)> entries = [];
        var (x, y) = (2.0, top + (Row / 2));
        void Add(bool used, Action<SvgWriter, double, double> mark, string words)
        {
            var room = 24 + TextWidth.Of(words) + 16;
            if (!used)
            {
                return;
            }

            (x, y) = x > 2 && x + room - 16 > width ? (2, y + Row) : (x, y);
            entries.Add((mark, words, x, y));
            x += room;
        }

        Add(spans.Any(s => s.Start == BarStart.Fitted), (svg, a, b) => LifeMark.Draw(svg, BarStart.Fitted, a, b), input.Words.Fitted);
        Add(spans.Any(s => s.Start == BarStart.MovedIn), (svg, a, b) => LifeMark.Draw(svg, BarStart.MovedIn, a, b), input.Words.MovedIn);
        Add(spans.Any(s => s.End == BarEnd.Running), (svg, a, b) => LifeMark.Draw(svg, BarEnd.Running, a, b), input.Words.Running);
        Add(spans.Any(s => s.End == BarEnd.Renewed), (svg, a, b) => LifeMark.Draw(svg, BarEnd.Renewed, a, b), input.Words.Renewed);
        Add(spans.Any(s => s.End == BarEnd.MovedOut), (svg, a, b) => LifeMark.Draw(svg, BarEnd.MovedOut, a, b), input.Words.MovedOut);
        return new LifeKey(entries, entries.Count == 0 ? top : y + (Row / 2));
    }

    public void Draw(SvgWriter svg)
    {
        foreach (var (mark, words, x, y) in Entries)
        {
            mark(svg, x + 9, y);
            svg.Label("row-value", x + 24, y + 4.5, words);
        }
    }
}
