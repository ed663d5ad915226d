using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Layshaft.Site.Tests.Wording;

/// <summary>No page has words of its own: they come from the texts file, so that it can be translated whole, or from the book.</summary>
public partial class EveryWordTests
{
    [Fact]
    public void Every_word_of_every_page_comes_from_the_texts_or_from_the_book()
    {
        var book = Scalars().OrderByDescending(s => s.Length).ToArray();
        var alien = DemoBook.Pages(DemoBook.Composition(null, MarkedTexts.Load()))
            .SelectMany(p => MarkedTexts.Unmarked(p.Html))
            .Distinct()
            .Select(piece => Without(Spaces().Replace(piece, " "), book))
            .Where(rest => Letters().IsMatch(rest))
            .ToArray();

        Assert.Empty(alien);
    }

    [Fact]
    public void A_word_that_came_from_nowhere_would_be_seen() =>
        Assert.Equal(["and", "deep", "hidden"], MarkedTexts.Unmarked("<p>\uE000Shown \uE000in\uE001 full\uE001 and</p><svg aria-label='hidden'><text>\uE000cut</text><text>short\uE001 deep</text></svg>").Order());

    private static string Without(string piece, IEnumerable<string> book)
    {
        foreach (var scalar in book)
        {
            if (piece.Contains(scalar, StringComparison.Ordinal))
            {
                piece = Regex.Replace(piece, $@"(?<![\p{{L}}\d]){Regex.Escape(scalar)}(?![\p{{L}}\d])", string.Empty);
            }
        }

        return Units().Replace(piece, string.Empty);
    }

    // Sentences of the book, whole; and the sentences that a Markdown note is broken up into on the page.
    private static HashSet<string> Scalars()
    {
        var found = new HashSet<string>(StringComparer.Ordinal);
        var folder = Path.Combine(AppContext.BaseDirectory, "demo-data");
        foreach (var path in Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories))
        {
            var parser = new Parser(new StringReader(File.ReadAllText(path)));
            while (parser.MoveNext())
            {
                if (parser.Current is Scalar { Value: var value } && Letters().IsMatch(value))
                {
                    found.Add(Spaces().Replace(value, " ").Trim());
                }
            }
        }

        return found;
    }

    // Symbols of units, which no language translates; figures stand before them.
    [GeneratedRegex(@"(?<=\d\s?)(km/h|mph|mm|in|ft|N·m|lbf·ft|N|lbf|h|km|mi|m|m²|s|kg|kg/m³|°C|J|%|GBP)(?![\p{L}])")]
    private static partial Regex Units();

    [GeneratedRegex(@"\p{L}")]
    private static partial Regex Letters();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
