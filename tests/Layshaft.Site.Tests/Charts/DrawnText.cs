using System.Globalization;
using System.Xml.Linq;
using Layshaft.Site.Charts.Drawing;

namespace Layshaft.Site.Tests.Charts;

/// <summary>Where the text elements of a drawing stand, by the same estimate of widths that the charts use.</summary>
internal static class DrawnText
{
    private const double Height = 10;

    public static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    /// <summary>The box that a text fills; text turned on its side (the only turn there is) fills an upright one.</summary>
    public static (double Left, double Right, double Top, double Bottom) Box(XElement text)
    {
        var (x, y) = (Number(text, "x"), Number(text, "y"));
        var width = TextWidth.Of(text.Value) / 1.06;
        var left = text.Attribute("text-anchor")?.Value switch { "middle" => width / 2, "end" => width, _ => 0 };
        return text.Attribute("transform") is null
            ? (x - left, x - left + width, y - Height, y)
            : (x - Height, x, y + left - width, y + left);
    }

    public static (double Left, double Right) Span(XElement text) => (Box(text).Left, Box(text).Right);

    public static bool Overlap(XElement a, XElement b)
    {
        var (one, other) = (Box(a), Box(b));
        return one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;
    }
}
