using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Book.Records;
using Layshaft.Site.Html;

namespace Layshaft.Site.Look;

/// <summary>
/// The styles of pages. They stand in the head of each page: on a phone with a poor signal the first words would wait for a
/// stylesheet as long as for the page itself. The sheets stay what is written and laid over; in a page they are one, made small.
/// </summary>
public sealed partial class PageStyles
{
    /// <summary>The sheet of every page.</summary>
    public const string Site = "site.css";

    /// <summary>The sheet of charts, in every page too.</summary>
    public const string Charts = "charts.css";

    /// <summary>The sheet of tables for the wall.</summary>
    public const string Wall = "wall.css";

    /// <summary>The sheet of a lap sheet.</summary>
    public const string Lap = "lap.css";

    /// <summary>The sheet of an inspection and build sheet.</summary>
    public const string Bench = "bench.css";

    private readonly string colours;
    private readonly IReadOnlyDictionary<string, string> sheets;
    private readonly ConcurrentDictionary<(string Look, string Sheets), string> small = new();

    private PageStyles(string colours, IReadOnlyDictionary<string, string> sheets) => (this.colours, this.sheets) = (colours, sheets);

    /// <summary>No styles at all.</summary>
    public static PageStyles None { get; } = new(string.Empty, new Dictionary<string, string>());

    /// <summary>The sheets that stand in pages, by name; they are no files of the site.</summary>
    public static IReadOnlyList<string> Sheets { get; } = [Site, Charts, Wall, Lap, Bench];

    /// <summary>Stands for all that the styles say.</summary>
    public string Fingerprint => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\0', sheets.OrderBy(s => s.Key, StringComparer.Ordinal).Select(s => $"{s.Key}\0{s.Value}").Prepend(colours)))));

    /// <summary>The styles of a shop.</summary>
    /// <param name="shop">The shop, for its colour.</param>
    /// <param name="sheets">The text of each of <see cref="Sheets"/> that there is, by name.</param>
    public static PageStyles Of(Shop shop, IReadOnlyDictionary<string, string> sheets)
    {
        ArgumentNullException.ThrowIfNull(shop);
        ArgumentNullException.ThrowIfNull(sheets);
        return new PageStyles(ShopColours.Stylesheet(shop), sheets);
    }

    /// <summary>The style of a page.</summary>
    /// <param name="look">The page's address of the folder of the look, with a slash at its end.</param>
    /// <param name="more">A sheet besides those of every page; null for none.</param>
    /// <param name="rules">Rules of this page alone.</param>
    public PageStyle For(string look, string? more, string rules)
    {
        ArgumentNullException.ThrowIfNull(look);
        ArgumentNullException.ThrowIfNull(rules);
        var text = small.GetOrAdd((look, more ?? string.Empty), key => Small(key.Look, [Site, Charts, key.Sheets])) + StyleText.Of(rules, a => a);
        return new PageStyle(
            text.Length == 0 ? null : new RawHtml(text),
            Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text))));
    }

    private string Small(string look, string[] names)
    {
        var text = colours + string.Concat(names.Where(sheets.ContainsKey).Select(n => StyleText.Of(sheets[n], a => IsRelative(a) ? look + a : a)));

        // Imports count only before all else.
        var imports = string.Concat(Imported().Matches(text).Select(m => m.Value));
        return imports + StyleText.Of(Imported().Replace(text, string.Empty), a => a);
    }

    private static bool IsRelative(string address) =>
        address.Length > 0 && address[0] is not ('/' or '#') && address.AsSpan().IndexOfAny(":/?#") is var end && (end < 0 || address[end] != ':');

    [GeneratedRegex("@import [^;]*;", RegexOptions.CultureInvariant, 2000)]
    private static partial Regex Imported();
}

/// <summary>The style of a page.</summary>
/// <param name="Text">What stands in its head; null for nothing.</param>
/// <param name="Hash">SHA-256 of that text in base 64, by which the page's policy allows it (Content Security Policy Level 3, 8.2).</param>
public sealed record PageStyle(RawHtml? Text, string Hash);
