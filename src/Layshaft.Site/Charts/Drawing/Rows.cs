namespace Layshaft.Site.Charts.Drawing;

/// <summary>
/// Places the rows of a bar chart: names in a column at the left where there is room, above their bar on a phone.
/// </summary>
internal sealed class Rows
{
    private const double LineHeight = 16;
    private const double NameColumnMost = 230;

    private Rows(double barLeft, IReadOnlyList<Row> all, double bottom) => (BarLeft, All, Bottom) = (barLeft, all, bottom);

    /// <summary>Where bars start.</summary>
    public double BarLeft { get; }

    public IReadOnlyList<Row> All { get; }

    /// <summary>Under the last row.</summary>
    public double Bottom { get; }

    /// <param name="size">For which width.</param>
    /// <param name="names">Name of each row.</param>
    /// <param name="top">Where the first row starts.</param>
    /// <param name="barHeight">Height that the bars of one row take.</param>
    /// <param name="indent">Room before the names, for a mark.</param>
    /// <param name="reserved">On a phone: room at the right of the last line of each name, for its value.</param>
    public static Rows Lay(
        ChartSize size, IReadOnlyList<string> names, double top, double barHeight, double indent, IReadOnlyList<double>? reserved = null)
    {
        var wide = size == ChartSize.Wide;
        var column = wide
            ? Math.Min(NameColumnMost, TextWidth.Widest(names) + 2)
            : ChartSheet.Width(size) - indent - 2;
        List<Row> rows = [];
        var y = top;
        for (var i = 0; i < names.Count; i++)
        {
            var lines = TextWidth.Wrap(names[i], column);
            var name = lines.Count * LineHeight;
            if (wide)
            {
                var height = Math.Max(name, barHeight) + 12;
                var middle = y + (height / 2);
                rows.Add(new Row(lines, indent, middle - (name / 2) + 12, middle, y, y + height, middle - (name / 2) + 12 + name - LineHeight));
                y += height;
            }
            else
            {
                var needed = reserved is null ? 0 : reserved[i];
                var fits = TextWidth.Of(lines[^1]) + needed + 8 <= column;
                var text = name + (fits ? 0 : LineHeight);
                var middle = y + text + 5 + (barHeight / 2);
                rows.Add(new Row(lines, indent, y + 13, middle, y, middle + (barHeight / 2) + 12, y + text - 3));
                y = rows[^1].Bottom;
            }
        }

        return new Rows(wide ? indent + column + 12 : 14, rows, y);
    }

    /// <summary>Writes the name of a row.</summary>
    public static void Name(SvgWriter svg, Row row, string cssClass = "row-name")
    {
        for (var i = 0; i < row.Name.Count; i++)
        {
            svg.Label(cssClass, row.NameX, row.NameBaseline + (i * LineHeight), row.Name[i]);
        }
    }
}

/// <summary>One placed row.</summary>
internal sealed record Row(
    IReadOnlyList<string> Name, double NameX, double NameBaseline, double BarMiddle, double Top, double Bottom, double ValueBaseline);
