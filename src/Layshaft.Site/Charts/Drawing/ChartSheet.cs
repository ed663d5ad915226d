using System.Text.RegularExpressions;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>The outside of every chart: the <c>svg</c> element with its size, its title and its description.</summary>
internal static partial class ChartSheet
{
    /// <summary>Text size in user units, everywhere.</summary>
    public const double TextSize = 13;

    public static double Width(ChartSize size) => size == ChartSize.Wide ? 720 : 360;

    public static string Id(ChartFrame frame, ChartSize size, string part) =>
        $"{frame.IdPrefix}-{(size == ChartSize.Wide ? 'w' : 'c')}-{part}";

    /// <summary>Draws a picture: to a screen reader one image with a name and a description.</summary>
    public static RawHtml Picture(ChartFrame frame, ChartSize size, double height, Action<SvgWriter> body) =>
        Draw(frame, size, height, linked: false, "chart", body);

    /// <summary>Draws a picture with a class of its own in place of <c>chart</c>.</summary>
    public static RawHtml Picture(ChartFrame frame, ChartSize size, double height, string cssClass, Action<SvgWriter> body) =>
        Draw(frame, size, height, linked: false, cssClass, body);

    /// <summary>
    /// Draws a picture that holds links. The role "img" would hide them from screen readers, so it is a group then.
    /// </summary>
    public static RawHtml WithLinks(ChartFrame frame, ChartSize size, double height, bool linked, Action<SvgWriter> body) =>
        Draw(frame, size, height, linked, "chart", body);

    private static RawHtml Draw(ChartFrame frame, ChartSize size, double height, bool linked, string cssClass, Action<SvgWriter> body)
    {
        ArgumentNullException.ThrowIfNull(frame);
        if (frame.IdPrefix is null || !IdPattern().IsMatch(frame.IdPrefix))
        {
            throw new ArgumentException("The id prefix must be an ASCII letter, then letters, digits, '-' or '_'.", nameof(frame));
        }

        if (string.IsNullOrWhiteSpace(frame.Title) || string.IsNullOrWhiteSpace(frame.Description))
        {
            throw new ArgumentException("A chart needs a title and a description: they are what is read aloud.", nameof(frame));
        }

        var title = Id(frame, size, "t");
        var description = Id(frame, size, "d");
        using SvgWriter svg = new();
        svg.Open("svg", $"{cssClass} {(size == ChartSize.Wide ? "chart-wide" : "chart-compact")}");
        svg.With("viewBox", $"0 0 {SvgNumber.Of(Width(size))} {SvgNumber.Of(height)}").With("width", Width(size)).With("height", height);
        svg.With("font-size", TextSize).With("role", linked ? "group" : "img");
        if (linked)
        {
            svg.With("aria-labelledby", title).With("aria-describedby", description);
        }
        else
        {
            svg.With("aria-labelledby", $"{title} {description}");
        }

        svg.Open("title").With("id", title).Say(frame.Title).Close();
        svg.Open("desc").With("id", description).Say(frame.Description).Close();
        body(svg);
        return svg.Close().Finish();
    }

    [GeneratedRegex("^[A-Za-z][A-Za-z0-9_-]*\\z", RegexOptions.CultureInvariant)]
    private static partial Regex IdPattern();
}
