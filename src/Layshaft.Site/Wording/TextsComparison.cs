using Layshaft.Book.Problems;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Wording;

/// <summary>Holds a texts file against the English one.</summary>
internal static class TextsComparison
{
    // More than these are counted, not named: a shop that has begun a language of its own knows that it is not done.
    private const int Named = 12;

    /// <summary>Keys that no page says, places that nothing fills, and marks that are none.</summary>
    internal static IEnumerable<TemplateProblem> Of(string name, TextsFile reference, TextsFile file)
    {
        foreach (var (key, sentence) in file.Sentences)
        {
            var (line, column) = file.Places[key];
            if (!reference.Sentences.TryGetValue(key, out var english))
            {
                var near = NearestWord.Of(key, reference.Places.Keys.Where(k => !file.Places.ContainsKey(k)));
                yield return new(name, line, column, $"No page says `{key}`; {(near is null ? "remove it or correct its spelling." : $"did you mean `{near}`?")}");
                continue;
            }

            foreach (var place in sentence.Places.Except(english.Places).Where(p => p != Sentence.CountName || !english.HasForms))
            {
                var places = english.Places.Count == 0 ? "it has none" : $"there are {string.Join(", ", english.Places.Order(StringComparer.Ordinal).Select(p => $"{{{p}}}"))}";
                yield return new(name, line, column, $"The sentence `{key}` has a place `{{{place}}}` that nothing fills; {places}.");
            }

            if (key == Texts.DecimalMarkKey && sentence.Other.Source is not ("." or ","))
            {
                yield return new(name, line, column, "The decimal mark is `.` or `,`.");
            }
        }
    }

    /// <summary>What pages say in English for want of other words.</summary>
    internal static IReadOnlyList<TemplateProblem> Missing(string name, IReadOnlyList<string> keys)
    {
        var notices = keys.Take(Named)
            .Select(k => new TemplateProblem(name, 0, 0, $"The sentence `{k}` is missing, so pages say it in English; translate it from {TextsLoader.Reference}.")).ToList();
        if (keys.Count > Named)
        {
            notices.Add(new(name, 0, 0, $"{keys.Count - Named} more sentences are missing, so pages say them in English, from `{keys[Named]}` on."));
        }

        return notices;
    }
}
