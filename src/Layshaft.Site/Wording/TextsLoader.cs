using System.Security.Cryptography;
using System.Text;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Wording;

/// <summary>Texts, or why there are none.</summary>
/// <param name="Texts">The texts; null exactly when there are problems.</param>
/// <param name="Problems">What is wrong, with file, line and column.</param>
/// <param name="Notices">What pages say in English, because a shop's own language has no words for it yet; old names of keys.</param>
public sealed record TextsResult(Texts? Texts, IReadOnlyList<TemplateProblem> Problems, IReadOnlyList<TemplateProblem> Notices);

/// <summary>Reads the words of one language from <c>texts/LANGUAGE.yaml</c>.</summary>
public static class TextsLoader
{
    /// <summary>The file of the language that all others are measured by.</summary>
    public const string Reference = "texts/en.yaml";

    /// <summary>
    /// The texts of a language, ours with the shop's over them. English is the measure: no other keys, no place that the
    /// English sentence lacks. A regional language, such as <c>en-US</c>, needs only the sentences in which it differs: the rest
    /// is taken from the language it belongs to. A shop's file may hold only the sentences that it changes; what a language of
    /// its own lacks is taken from English and named.
    /// </summary>
    /// <param name="folders">Where to read.</param>
    /// <param name="language">The language's tag, for instance <c>en</c>.</param>
    public static TextsResult Load(TemplateFolders folders, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(folders);
        ArgumentException.ThrowIfNullOrWhiteSpace(language);
        var problems = new List<TemplateProblem>();
        var inOurs = TemplateFiles.Read(new(folders.Ours), "*.yaml", problems);
        var inShops = folders.Shop is { } shop ? TemplateFiles.Read(new(shop), "*.yaml", problems) : [];
        if (ReadOne(inOurs, Reference, problems) is not { } reference)
        {
            problems.Add(new(Reference, 0, 0, "This texts file is missing from the program's folder. Install Layshaft again."));
            return new(null, problems, []);
        }

        string[] names = [.. FromGeneralToRegional(language).Select(l => $"texts/{l}.yaml")];
        TextsFile?[] ours = [.. names.Select(n => n == Reference ? reference : ReadOne(inOurs, n, problems))];
        TextsFile?[] shops = [.. names.Select(n => ReadOne(inShops, n, problems))];
        if (ours[^1] is null && shops[^1] is null && problems.Count == 0)
        {
            problems.Add(new(names[^1], 0, 0, $"There are no texts for '{language}'. Add this file in templates/texts, or write one of: {string.Join(", ", Languages(folders))}."));
        }

        TextsFile[] layers = [.. ours.Concat(shops).OfType<TextsFile>()];
        problems.AddRange(layers.SelectMany(file => TextsComparison.Of(file.Name, reference, file)));
        var sentences = Merge(layers);
        var missing = reference.Sentences.Keys.Except(sentences.Keys, StringComparer.Ordinal).ToArray();
        if (ours[0] is not null)
        {
            problems.AddRange(missing.Select(k => new TemplateProblem(names[0], 0, 0, $"The text '{k}' is missing. Translate it from {Reference}.")));
        }

        if (problems.Count > 0)
        {
            return new(null, problems, []);
        }

        foreach (var key in missing)
        {
            sentences[key] = reference.Sentences[key];
        }

        var templates = folders.Shop is { } own ? TemplateFiles.Read(new(own), "*.html", []) : [];
        TemplateProblem[] renamed = [.. layers.SelectMany(RenamedKeys.In), .. templates.SelectMany(t => RenamedKeys.In(t.Key, t.Value))];
        return new(new(sentences, language, Fingerprint(language, sentences)), [], [.. TextsComparison.Missing(names[^1], missing), .. renamed]);
    }

    /// <summary>The languages that there are texts for, ours and the shop's, in order.</summary>
    /// <param name="folders">Where to look.</param>
    public static IReadOnlyList<string> Languages(TemplateFolders folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        return [.. TemplateFiles.Read(folders, "*.yaml", [])
            .Keys.Where(n => Path.GetDirectoryName(n) == "texts").Select(n => Path.GetFileNameWithoutExtension(n)).Order(StringComparer.Ordinal)];
    }

    // The tag of a regional language begins with that of its language: en-US with en (BCP 47, lookup in RFC 4647, section 3.4).
    private static IEnumerable<string> FromGeneralToRegional(string language)
    {
        for (var end = language.IndexOf('-'); end > 0; end = language.IndexOf('-', end + 1))
        {
            yield return language[..end];
        }

        yield return language;
    }

    private static TextsFile? ReadOne(SortedDictionary<string, string> files, string name, List<TemplateProblem> problems) =>
        files.TryGetValue(name, out var text) ? TextsFile.Read(name, text, problems) : null;

    private static SortedDictionary<string, Sentence> Merge(TextsFile[] layers)
    {
        var all = new SortedDictionary<string, Sentence>(StringComparer.Ordinal);
        foreach (var (key, sentence) in layers.SelectMany(l => l.Sentences))
        {
            all[key] = sentence;
        }

        return all;
    }

    private static string Fingerprint(string language, SortedDictionary<string, Sentence> sentences)
    {
        var all = new StringBuilder(language);
        foreach (var (key, sentence) in sentences)
        {
            foreach (var (form, words) in sentence.Forms())
            {
                all.Append('\0').Append(key).Append('\0').Append(form).Append('\0').Append(words.Source);
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(all.ToString())));
    }
}
