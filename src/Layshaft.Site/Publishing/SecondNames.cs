using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>
/// What a tree of second names of a site's files holds, told without a walk: what the site was seen to have, but for what an exchange
/// changed and what lies in folders whose times tell nothing.
/// </summary>
internal static class SecondNames
{
    /// <summary>Notes what the tree has for certain, and gives what is to be looked at in it.</summary>
    /// <param name="seen">The site as it was looked at.</param>
    /// <param name="now">The paths of the files that matter.</param>
    /// <param name="has">Which of them the tree may have; those that it has for certain when it is done.</param>
    /// <param name="changes">What the exchange changed.</param>
    /// <param name="restless">The folders whose times tell nothing.</param>
    /// <returns>The site's files that the tree has not for certain, or that do not matter.</returns>
    internal static IReadOnlyList<string> Unsure(OldSite seen, PathTable now, bool[] has, SpareChanges changes, IReadOnlyList<string> restless)
    {
        var ours = seen.Register.Paths;
        for (var i = 0; i < has.Length; i++)
        {
            has[i] = has[i] && now.PlaceIn(ours, i) is >= 0 and var was && seen.IsAsNoted(was);
        }

        foreach (var i in Enumerable.Range(0, changes.Paths.Count).Select(i => changes.Paths.PlaceIn(now, i)).Concat(restless.SelectMany(now.In)).Where(i => i >= 0))
        {
            has[i] = false;
        }

        return [.. Enumerable.Range(0, ours.Count).Where(i => ours.PlaceIn(now, i) is var place && (place < 0 || !has[place])).Select(ours.TextOf)];
    }
}
