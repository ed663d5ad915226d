namespace Layshaft.Site.Charts.Drawing;

/// <summary>A link inside a drawing.</summary>
internal static class ChartLink
{
    /// <summary>Draws the content, inside a link where there is one.</summary>
    /// <exception cref="ArgumentException">The link could leave the site or run code, or has no name.</exception>
    public static void Around(SvgWriter svg, string? link, string accessibleName, Action content)
    {
        if (link is null)
        {
            svg.Open("g");
        }
        else
        {
            if (link.Length == 0 || link.Contains(':', StringComparison.Ordinal) || link.StartsWith("//", StringComparison.Ordinal) || link.Contains('\\', StringComparison.Ordinal))
            {
                throw new ArgumentException($"A link in a drawing must be relative or a #fragment, not '{link}'.", nameof(link));
            }

            if (string.IsNullOrWhiteSpace(accessibleName))
            {
                throw new ArgumentException("A link in a drawing needs a name to be read aloud.", nameof(accessibleName));
            }

            svg.Open("a", "chart-link").With("href", link).With("aria-label", accessibleName);
        }

        content();
        svg.Close();
    }
}
