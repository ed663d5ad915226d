using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;

namespace Layshaft.Site.Pages.Report;

/// <summary>Says what a change of gears takes: what is changed, where it comes from, how long it takes.</summary>
internal static class ChangeWords
{
    /// <summary>The sentences; empty if what is fitted stays, or is not known.</summary>
    public static IEnumerable<string> Of(EventGearing gearing, Composition composition)
    {
        if (gearing.Advice is not { KeepsFitted: false, Recommended: { } best } || GearChange.Of(gearing.Case, best.Set) is not { } change)
        {
            yield break;
        }

        var time = change.Labour is { } labour
            ? composition.Say(change.BoxOut ? "gearing.labour.out" : "gearing.labour.in", ("time", composition.Figures.Hours(labour).Text))
            : string.Empty;
        yield return composition.Say("gearing.work", ("what", Names(change.Pairs, composition)), ("time", time)).TrimEnd();
        foreach (var source in change.Pairs.GroupBy(p => p.Source).OrderBy(g => g.Key))
        {
            yield return composition.Say("gearing.source." + source.Key.ToString().ToLowerInvariant(), ("what", Names(source, composition)));
        }
    }

    private static string Names(IEnumerable<NewPair> pairs, Composition composition) => string.Join(", ", pairs.Select(p => p.What switch
    {
        ChangedGears.GearPair => GearingWords.GearPair(p.Gear, p.Pair?.ToString() ?? string.Empty, composition),
        ChangedGears.DropGears => composition.Say("gearing.part.drop", ("pair", p.Pair?.ToString() ?? string.Empty)),
        _ => composition.Say("gearing.part.final", ("pair", p.Pair?.ToString() ?? string.Empty)),
    }));
}
