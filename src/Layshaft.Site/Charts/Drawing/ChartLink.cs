namespace Layshaft.Site.Charts.Drawing;

/// <summary>A link inside a drawing.</summary>
internal static class ChartLink
{
    /// <summary>
    /// A name that begins with what is seen, so that somebody who speaks it reaches the link (WCAG 2.2, success criterion
    /// 2.5.3, Label in Name).
    /// </summary>
    public static string NameOf(GradeMark? grade, string label, string accessibleName)
    {
        var seen = string.Join(' ', new[] { grade?.Letter, label }.Where(w => !string.IsNullOrWhiteSpace(w)));
        return seen.Length == 0 || accessibleName.Contains(seen, StringComparison.OrdinalIgnoreCase) ? accessibleName : $"{seen}: {accessibleName}";
    }

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
