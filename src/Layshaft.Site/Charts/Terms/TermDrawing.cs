using System.Collections.Concurrent;
using Layshaft.Book.Records;
using Layshaft.Site.Charts.Drawing;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Terms;

/// <summary>A small drawing for a word for damage: the part, and where on it the damage is. Exaggerated, not to scale.</summary>
public static class TermDrawing
{
    private static readonly ConcurrentDictionary<string, (string Before, string After)> Drawn = new(StringComparer.Ordinal);

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
            TermFamily.Friction => FrictionTermDrawings.All,
            TermFamily.Mechanism => MechanismTermDrawings.All,
            _ => EngagementTermDrawings.All,
        };
        if (!drawings.TryGetValue(term.Word, out var draw))
        {
            throw new ArgumentException($"There is no drawing for '{term.Word}'.", nameof(term));
        }

        // The same lines on every page that has the word: drawn once, and only named anew.
        var (before, after) = Drawn.GetOrAdd(term.Word, static (_, draw) => Around(draw), draw);
        return new RawHtml([before, SvgText.Attribute(name), after]);
    }

    private static (string Before, string After) Around(Action<TermPen> draw)
    {
        const string Place = "?";
        using SvgWriter svg = new();
        svg.Open("svg", "term-drawing").With("viewBox", "0 0 160 110").With("width", 160).With("height", 110);
        svg.With("role", "img").With("aria-label", Place);
        draw(new TermPen(svg));
        var markup = svg.Close().Finish().Markup;
        var at = markup.IndexOf("\"" + Place + "\"", StringComparison.Ordinal) + 1;
        return (markup[..at], markup[(at + Place.Length)..]);
    }
}
