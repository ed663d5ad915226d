using System.Text.RegularExpressions;

namespace Layshaft.Site.Tests.Wording;

/// <summary>The keys that code and templates say, found in their sources.</summary>
internal static partial class SourceTexts
{
    /// <summary>
    /// A pattern for each key in quotes. A place in an interpolated one (<c>$"grade.{word}.name"</c>) and the rest after one
    /// that ends in a point (<c>"life.kind." + kind</c>) stand for one word; what begins with a point (<c>key + ".words"</c>)
    /// goes with every key that is said.
    /// </summary>
    public static IReadOnlyList<Regex> SaidInCodeAndTemplates()
    {
        var root = Root();
        var files = Directory.EnumerateFiles(Path.Combine(root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(p => !p.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Concat(Directory.EnumerateFiles(Path.Combine(root, "site-templates"), "*.html", SearchOption.AllDirectories));
        var sources = files.Select(File.ReadAllText).ToArray();
        var endings = sources.SelectMany(s => Ending().Matches(s).Select(m => m.Groups[1].Value)).Distinct().ToArray();
        return [.. sources.SelectMany(s => Quoted().Matches(s).Select(m => m.Groups[1].Value)).Distinct().SelectMany(k => endings.Prepend("").Select(e => PatternOf(k + e)))];
    }

    private static Regex PatternOf(string key)
    {
        var pattern = string.Concat(Place().Split(key).SelectMany((piece, i) => i == 0 ? [Regex.Escape(piece)] : new[] { "[a-z0-9_]+", Regex.Escape(piece) }));
        return new Regex($"^{pattern}{(key.EndsWith('.') ? "[a-z0-9_]+" : "")}$", RegexOptions.CultureInvariant);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!Directory.Exists(Path.Combine(folder.FullName, "site-templates")) || !Directory.Exists(Path.Combine(folder.FullName, "src")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The sources are not above the tests.");
        }

        return folder.FullName;
    }

    // At least one whole word with its point before any place, so that no pattern fits everything.
    [GeneratedRegex(@"""([a-z_]+\.[a-z0-9_.]*(?:\{[^""{}]+\}[a-z0-9_.]*)*)""")]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\+ ""(\.[a-z_]+)""")]
    private static partial Regex Ending();

    [GeneratedRegex(@"\{[^{}]+\}")]
    private static partial Regex Place();
}
