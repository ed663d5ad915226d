using System.Security.Cryptography;
using System.Text;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Wording;

/// <summary>Texts, or why there are none.</summary>
/// <param name="Texts">The texts; null exactly when there are problems.</param>
/// <param name="Problems">What is wrong, with file, line and column.</param>
/// <param name="Notices">What pages say in English, because a shop's own language has no words for it yet.</param>
public sealed record TextsResult(Texts? Texts, IReadOnlyList<TemplateProblem> Problems, IReadOnlyList<TemplateProblem> Notices);

/// <summary>Reads the words of one language from <c>texts/LANGUAGE.yaml</c>.</summary>
public static class TextsLoader
{
    /// <summary>The file of the language that all others are measured by.</summary>
    public const string Reference = "texts/en.yaml";

    /// <summary>
    /// The texts of a language, ours with the shop's over them. English is the measure: no other keys, no place that the
    /// English sentence lacks. A shop's file may hold only the sentences that it changes, and in a language of its own what
    /// it lacks is said in English and named.
    /// </summary>
    /// <param name="folders">Where to read.</param>
    /// <param name="language">The language's tag, for instance <c>en</c>.</param>
    public static TextsResult Load(TemplateFolders folders, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(folders);
        ArgumentException.ThrowIfNullOrWhiteSpace(language);
        var problems = new List<TemplateProblem>();
        var name = $"texts/{language}.yaml";
        var reference = ReadOne(folders.Ours, Reference, problems);
        if (reference is null)
        {
            problems.Add(new(Reference, 0, 0, "This file of texts is missing from the program's folder; install it again."));
            return new(null, problems, []);
        }

        var ours = name == Reference ? reference : ReadOne(folders.Ours, name, problems);
        var shops = folders.Shop is null ? null : ReadOne(folders.Shop, name, problems);
        if (ours is null && shops is null && problems.Count == 0)
        {
            problems.Add(new(name, 0, 0, $"There are no texts for `{language}`; write this file in templates/texts or choose one of: {string.Join(", ", Languages(folders))}."));
        }

        problems.AddRange(new[] { ours, shops }.OfType<TextsFile>().SelectMany(file => TextsComparison.Of(name, reference, file)));
        var sentences = Merge(ours, shops);
        var missing = reference.Sentences.Keys.Except(sentences.Keys, StringComparer.Ordinal).ToArray();
        if (ours is not null)
        {
            problems.AddRange(missing.Select(k => new TemplateProblem(name, 0, 0, $"The sentence `{k}` is missing; translate it from {Reference}.")));
        }

        if (problems.Count > 0)
        {
            return new(null, problems, []);
        }

        foreach (var key in missing)
        {
            sentences[key] = reference.Sentences[key];
        }

        return new(new(sentences, language, Fingerprint(language, sentences)), [], TextsComparison.Missing(name, missing));
    }

    /// <summary>The languages that there are texts for, ours and the shop's, in order.</summary>
    /// <param name="folders">Where to look.</param>
    public static IReadOnlyList<string> Languages(TemplateFolders folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        return [.. TemplateFiles.Read(folders, "*.yaml", [])
            .Keys.Where(n => Path.GetDirectoryName(n) == "texts").Select(n => Path.GetFileNameWithoutExtension(n)).Order(StringComparer.Ordinal)];
    }

    private static TextsFile? ReadOne(string folder, string name, List<TemplateProblem> problems)
    {
        var files = TemplateFiles.Read(new(folder), "*.yaml", problems);
        return files.TryGetValue(name, out var text) ? TextsFile.Read(name, text, problems) : null;
    }

    private static SortedDictionary<string, Sentence> Merge(params TextsFile?[] layers)
    {
        var all = new SortedDictionary<string, Sentence>(StringComparer.Ordinal);
        foreach (var (key, sentence) in layers.SelectMany(l => l?.Sentences ?? []))
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
