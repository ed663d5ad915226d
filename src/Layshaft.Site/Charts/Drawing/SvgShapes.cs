namespace Layshaft.Site.Charts.Drawing;

/// <summary>Where a label stands from its point.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>The shapes that charts are made of. Colours come from the stylesheet through the class.</summary>
internal static class SvgShapes
{
    public static void Line(this SvgWriter svg, string cssClass, double x1, double y1, double x2, double y2) =>
        svg.Open("line", cssClass).With("x1", x1).With("y1", y1).With("x2", x2).With("y2", y2).Close();

    public static void Rect(this SvgWriter svg, string cssClass, double x, double y, double width, double height) =>
        svg.Open("rect", cssClass).With("x", x).With("y", y).With("width", Math.Max(0, width)).With("height", Math.Max(0, height)).Close();

    public static void Circle(this SvgWriter svg, string cssClass, double x, double y, double radius) =>
        svg.Open("circle", cssClass).With("cx", x).With("cy", y).With("r", radius).Close();

    public static void Path(this SvgWriter svg, string cssClass, string data, string? dash = null)
    {
        svg.Open("path", cssClass).With("d", data);
        if (!string.IsNullOrEmpty(dash))
        {
            svg.With("stroke-dasharray", dash);
        }

        svg.Close();
    }

    /// <summary>Text with its baseline at <paramref name="y"/>.</summary>
    public static void Label(this SvgWriter svg, string cssClass, double x, double y, string text, Anchor anchor = Anchor.Start)
    {
        svg.Open("text", cssClass).With("x", x).With("y", y);
        if (anchor != Anchor.Start)
        {
            svg.With("text-anchor", anchor == Anchor.Middle ? "middle" : "end");
        }

        svg.Say(text).Close();
    }
}
