using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>A group whose outputs are all in the site already: what they are and what they were made from is in the traces.</summary>
/// <param name="Group">The group.</param>
/// <param name="Make">Makes those that were removed or changed in the site.</param>
internal sealed record UnchangedGroup(OutputGroup Group, OutputMaker Make);

/// <summary>Every file of the site to be, in order of path, checked. Immutable.</summary>
public sealed class SitePlan
{
    private SitePlan(PathIndex<PlannedOutput> outputs, IReadOnlyList<PublishProblem> problems) => (Files, Problems) = (outputs, problems);

    /// <summary>The outputs in order of path.</summary>
    public IReadOnlyList<PlannedOutput> Outputs => Files;

    /// <summary>Paths that cannot be, or not beside each other; a plan with any is not published.</summary>
    public IReadOnlyList<PublishProblem> Problems { get; }

    /// <summary>The readers of the site's links; empty for a site that has none.</summary>
    public IReadOnlyList<LinkReader> Readers { get; private init; } = [];

    /// <summary>The outputs by path.</summary>
    internal PathIndex<PlannedOutput> Files { get; }

    /// <summary>A plan of the given outputs.</summary>
    /// <param name="outputs">The outputs in any order; gone through once.</param>
    public static SitePlan Of(IEnumerable<PlannedOutput> outputs) => Of(outputs, [], SiteTraces.None);

    /// <summary>A plan of the given outputs for a site that was published before.</summary>
    /// <param name="outputs">The outputs in any order; gone through once.</param>
    /// <param name="kept">Groups that the site has complete.</param>
    /// <param name="before">The files of that site.</param>
    internal static SitePlan Of(IEnumerable<PlannedOutput> outputs, IReadOnlyList<UnchangedGroup> kept, SiteTraces before)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        var files = new PathIndex<PlannedOutput>(Kept(kept, before).Concat(outputs));

        // Among the paths of the site nothing was wrong.
        return new(files, !files.HasTwins && files.All(f => before.Files.IndexOf(f.Path) >= 0) ? [] : [.. PathClashes.In(files).Distinct()]);
    }

    /// <summary>The plan of a site with links.</summary>
    /// <param name="readers">Their readers.</param>
    public SitePlan For(IReadOnlyList<LinkReader> readers) => new(Files, Problems) { Readers = readers };

    private static IEnumerable<PlannedOutput> Kept(IReadOnlyList<UnchangedGroup> kept, SiteTraces before)
    {
        var groups = kept.ToDictionary(k => k.Group.Name, StringComparer.Ordinal);
        var turn = 0;
        foreach (var trace in before.Files)
        {
            if (trace.Group is { } name && groups.TryGetValue(name, out var group))
            {
                yield return new PlannedOutput(trace.Path, trace.Key, group.Make) { Group = group.Group, Turn = turn++ };
            }
        }
    }
}
