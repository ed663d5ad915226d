using System.Text.RegularExpressions;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>Our own texts files.</summary>
internal static partial class LanguageFiles
{
    /// <summary>All languages.</summary>
    public static IReadOnlyList<string> All => TextsLoader.Languages(TemplateFolders.BesideProgram());

    /// <summary>The languages besides English that have every sentence.</summary>
    public static IEnumerable<string> Others => All.Where(l => l != "en" && !l.Contains('-', StringComparison.Ordinal));

    /// <summary>The languages that have only the sentences in which they differ from another.</summary>
    public static IEnumerable<string> Regional => All.Where(l => l.Contains('-', StringComparison.Ordinal));

    /// <summary>The sentences of a file as they stand in it.</summary>
    public static IReadOnlyDictionary<string, Sentence> Read(string language)
    {
        var problems = new List<TemplateProblem>();
        var name = $"texts/{language}.yaml";
        var file = TextsFile.Read(name, File.ReadAllText(Path.Combine(TemplateFolders.BesideProgram().Ours, name)), problems);
        Assert.Empty(problems);
        return file.Sentences;
    }

    /// <summary>The keys in the order of the file.</summary>
    public static IEnumerable<string> KeysInFile(string language) =>
        File.ReadLines(Path.Combine(TemplateFolders.BesideProgram().Ours, $"texts/{language}.yaml")).Select(l => KeyAtStart().Match(l)).Where(m => m.Success).Select(m => m.Value);

    /// <summary>The forms and places of a sentence.</summary>
    public static string Shape(Sentence sentence) =>
        string.Join(' ', sentence.Forms().Select(f => f.Name).Concat(sentence.Places.Order(StringComparer.Ordinal).Select(p => $"{{{p}}}")));

    [GeneratedRegex(@"^[a-z0-9_.]+(?=:)")]
    private static partial Regex KeyAtStart();
}
