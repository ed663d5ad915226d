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
                yield return new(name, line, column, $"No page uses '{key}'. {(near is null ? "Remove it or correct its spelling." : $"Did you mean '{near}'?")}");
                continue;
            }

            foreach (var place in sentence.Places.Except(english.Places).Where(p => p != Sentence.CountName || !english.HasForms))
            {
                var places = english.Places.Count == 0 ? "It has none" : $"It has {string.Join(", ", english.Places.Order(StringComparer.Ordinal).Select(p => $"{{{p}}}"))}";
                yield return new(name, line, column, $"The text '{key}' has no value for the place '{{{place}}}'. {places}.");
            }

            if (key == Texts.DecimalMarkKey && sentence.Other.Source is not ("." or ","))
            {
                yield return new(name, line, column, "The decimal mark must be '.' or ','.");
            }
        }
    }

    /// <summary>The texts that pages show in English because no translation exists.</summary>
    internal static IReadOnlyList<TemplateProblem> Missing(string name, IReadOnlyList<string> keys)
    {
        var notices = keys.Take(Named)
            .Select(k => new TemplateProblem(name, 0, 0, $"The text '{k}' is missing, so pages show it in English. Translate it from {TextsLoader.Reference}.")).ToList();
        if (keys.Count > Named)
        {
            notices.Add(new(name, 0, 0, $"{keys.Count - Named} more texts are missing, so pages show them in English, from '{keys[Named]}' on."));
        }

        return notices;
    }
}
