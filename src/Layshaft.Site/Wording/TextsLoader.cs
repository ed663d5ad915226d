using System.Security.Cryptography;
using System.Text;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Wording;

/// <summary>Texts, or why there are none.</summary>
/// <param name="Texts">The texts; null exactly when there are problems.</param>
/// <param name="Problems">What is wrong, with file, line and column.</param>
public sealed record TextsResult(Texts? Texts, IReadOnlyList<TemplateProblem> Problems);

/// <summary>Reads the words of one language from <c>texts/LANGUAGE.yaml</c>.</summary>
public static class TextsLoader
{
    private const string Reference = "texts/en.yaml";

    /// <summary>
    /// The texts of a language, ours with the shop's over them. English is the measure: another language has the same
    /// keys, each with no place that the English sentence lacks. A shop's file may hold only the sentences that it changes.
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
            return new(null, problems);
        }

        var ours = name == Reference ? reference : ReadOne(folders.Ours, name, problems);
        var shops = folders.Shop is null ? null : ReadOne(folders.Shop, name, problems);
        if (ours is null && shops is null && problems.Count == 0)
        {
            problems.Add(new(name, 0, 0, $"There are no texts for `{language}`; write this file or choose another language."));
        }

        var sentences = Merge(ours, shops);
        Compare(name, reference, sentences, problems);
        return problems.Count > 0 ? new(null, problems) : new(new(sentences, language, Fingerprint(language, sentences)), []);
    }

    private static SortedDictionary<string, Sentence>? ReadOne(string folder, string name, List<TemplateProblem> problems)
    {
        var files = TemplateFiles.Read(new(folder), "*.yaml", problems);
        return files.TryGetValue(name, out var text) ? TextsFile.Read(name, text, problems) : null;
    }

    private static SortedDictionary<string, Sentence> Merge(params SortedDictionary<string, Sentence>?[] layers)
    {
        var all = new SortedDictionary<string, Sentence>(StringComparer.Ordinal);
        foreach (var (key, sentence) in layers.SelectMany(l => l ?? []))
        {
            all[key] = sentence;
        }

        return all;
    }

    private static void Compare(
        string name, SortedDictionary<string, Sentence> reference, SortedDictionary<string, Sentence> texts, List<TemplateProblem> problems)
    {
        foreach (var key in reference.Keys.Where(k => !texts.ContainsKey(k)))
        {
            problems.Add(new(name, 0, 0, $"The sentence `{key}` is missing; translate it from {Reference}."));
        }

        foreach (var (key, sentence) in texts)
        {
            if (!reference.TryGetValue(key, out var english))
            {
                problems.Add(new(name, 0, 0, $"No page says `{key}`; remove it or correct its spelling."));
                continue;
            }

            foreach (var place in sentence.Places.Except(english.Places).Where(p => p != Sentence.CountName || !english.HasForms))
            {
                problems.Add(new(name, 0, 0, $"The sentence `{key}` has a place `{{{place}}}` that nothing fills."));
            }
        }
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
