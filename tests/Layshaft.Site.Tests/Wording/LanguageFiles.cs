using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>Our own texts files.</summary>
internal static class LanguageFiles
{
    /// <summary>The languages besides English.</summary>
    public static IEnumerable<string> Others => TextsLoader.Languages(TemplateFolders.BesideProgram()).Where(l => l != "en");

    /// <summary>The sentences of a file as they stand in it.</summary>
    public static IReadOnlyDictionary<string, Sentence> Read(string language)
    {
        var problems = new List<TemplateProblem>();
        var name = $"texts/{language}.yaml";
        var file = TextsFile.Read(name, File.ReadAllText(Path.Combine(TemplateFolders.BesideProgram().Ours, name)), problems);
        Assert.Empty(problems);
        return file.Sentences;
    }
}
