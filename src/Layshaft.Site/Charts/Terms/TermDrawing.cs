using Layshaft.Book.Records;
using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Terms;

/// <summary>A small drawing for a word for damage: the part, and where on it the damage is. Exaggerated, not to scale.</summary>
public static class TermDrawing
{
    /// <summary>Draws a word.</summary>
    /// <param name="term">One of <see cref="DamageTerms.All"/>.</param>
    /// <param name="name">The word in the language of the page.</param>
    /// <exception cref="ArgumentException">There is no drawing for the word.</exception>
    public static RawHtml Draw(DamageTerm term, string name)
    {
        ArgumentNullException.ThrowIfNull(term);
        var drawings = term.Family switch
        {
            TermFamily.GearTooth => GearTermDrawings.All,
            TermFamily.Bearing => BearingTermDrawings.All,
            _ => EngagementTermDrawings.All,
        };
        if (!drawings.TryGetValue(term.Word, out var draw))
        {
            throw new ArgumentException($"There is no drawing for '{term.Word}'.", nameof(term));
        }

        using SvgWriter svg = new();
        svg.Open("svg", "term-drawing").With("viewBox", "0 0 160 110").With("width", 160).With("height", 110);
        svg.With("role", "img").With("aria-label", name);
        draw(new TermPen(svg));
        return svg.Close().Finish();
    }
}
