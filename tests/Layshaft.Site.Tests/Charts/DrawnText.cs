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

    public static (double Left, double Right) Span(XElement text)
    {
        var x = Number(text, "x");
        var width = TextWidth.Of(text.Value) / 1.06;
        return text.Attribute("text-anchor")?.Value switch
        {
            "middle" => (x - (width / 2), x + (width / 2)),
            "end" => (x - width, x),
            _ => (x, x + width),
        };
    }

    public static bool Overlap(XElement a, XElement b)
    {
        var (leftA, rightA) = Span(a);
        var (leftB, rightB) = Span(b);
        return leftA < rightB && leftB < rightA && Math.Abs(Number(a, "y") - Number(b, "y")) < Height;
    }
}
