using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Layshaft.Site.Charts;
using Layshaft.Site.Html;

namespace Layshaft.Site.Tests.Charts;

/// <summary>Reads a drawing the way a reader does: values off the ticks, without the chart's own scales.</summary>
internal sealed class Drawing(RawHtml drawing)
{
    private readonly XElement root = XElement.Parse(drawing.Markup);

    public IEnumerable<XElement> Elements(string cssClass) =>
        root.Descendants().Where(e => e.Attribute("class")?.Value == cssClass);

    public XElement Text(string words) => root.Descendants().Single(e => e.Name.LocalName == "text" && e.Value == words);

    /// <summary>The corner points of each path of a class.</summary>
    public IReadOnlyList<IReadOnlyList<ChartPoint>> Paths(string cssClass) =>
        [.. Elements(cssClass).Where(e => e.Name.LocalName == "path").Select(e => Points(e.Attribute("d")!.Value))];

    /// <summary>Place to value along the horizontal axis whose name is given, from its first and last tick.</summary>
    public Func<double, double> Across(string axisName)
    {
        // The name stands nearer to its own row of ticks than to any other row.
        var name = DrawnText.Number(Text(axisName), "y");
        var row = Elements("tick").Where(t => t.Attribute("text-anchor")?.Value == "middle")
            .GroupBy(t => DrawnText.Number(t, "y")).MinBy(g => Math.Abs(g.Key - name))!;
        return Reading(row, "x");
    }

    /// <summary>Place to value along the upright axis.</summary>
    public Func<double, double> Upwards() => Reading(Elements("tick").Where(t => t.Attribute("text-anchor")?.Value == "end"), "y");

    private static Func<double, double> Reading(IEnumerable<XElement> ticks, string place)
    {
        var read = ticks.Select(t => (Value: Value(t.Value), Place: DrawnText.Number(t, place) - (place == "y" ? 4.5 : 0))).ToList();
        var (first, last) = (read[0], read[^1]);
        return p => first.Value + ((p - first.Place) / (last.Place - first.Place) * (last.Value - first.Value));
    }

    private static double Value(string tick) =>
        double.Parse(Regex.Replace(tick, @"[^0-9.\-]", string.Empty), CultureInfo.InvariantCulture) / (tick.Contains('%', StringComparison.Ordinal) ? 100 : 1);

    private static List<ChartPoint> Points(string data) =>
        [.. Regex.Matches(data, @"[ML](-?[0-9.]+) (-?[0-9.]+)").Select(m => new ChartPoint(
            double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture)))];
}
