using Layshaft.Site.Publishing.Links;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>Every file of the site to be, in order of path, checked. Immutable.</summary>
public sealed class SitePlan
{
    private readonly PlannedOutputs _outputs;

    private SitePlan(PlannedOutputs outputs, IReadOnlyList<PublishProblem> problems) => (_outputs, Problems) = (outputs, problems);

    /// <summary>The outputs in order of path.</summary>
    public IReadOnlyList<PlannedOutput> Outputs => _outputs;

    /// <summary>Paths that cannot be, or not beside each other; a plan with any is not published.</summary>
    public IReadOnlyList<PublishProblem> Problems { get; }

    /// <summary>Whom the links of the site open for; empty for a site that has none.</summary>
    public IReadOnlyList<LinkReader> Readers { get; private init; } = [];

    /// <summary>The paths of the outputs.</summary>
    internal PathTable Paths => _outputs.Paths;

    /// <summary>A plan of the given outputs.</summary>
    /// <param name="outputs">The outputs in any order; gone through once.</param>
    public static SitePlan Of(IEnumerable<PlannedOutput> outputs) => Of(outputs, [], SiteRegister.None);

    /// <summary>A plan of the given outputs for a site that stands.</summary>
    /// <param name="outputs">The outputs in any order; gone through once.</param>
    /// <param name="kept">Groups that it has whole already, and that are no other now.</param>
    /// <param name="before">What is recorded of that site. Among its paths nothing was wrong.</param>
    internal static SitePlan Of(IEnumerable<PlannedOutput> outputs, IReadOnlyList<UnchangedGroup> kept, SiteRegister before)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        var planned = PlannedOutputs.Of(outputs, kept, before);
        return new(planned, ReferenceEquals(planned.Paths, before.Paths) ? [] : [.. PathClashes.In(planned.Paths).Distinct()]);
    }

    /// <summary>The plan of a site with links.</summary>
    /// <param name="readers">Whom they open for.</param>
    public SitePlan For(IReadOnlyList<LinkReader> readers) => new(_outputs, Problems) { Readers = readers };

    /// <summary>What is wrong with one more path beside those of the plan.</summary>
    /// <param name="path">The path.</param>
    internal IReadOnlyList<PublishProblem> ProblemsWith(string path) => [.. PathClashes.Between(Paths, path).Distinct()];

    /// <summary>The key of an output.</summary>
    /// <param name="index">Which.</param>
    /// <param name="generator">The program's mark.</param>
    internal ContentHash KeyOf(int index, string generator) => _outputs.KeyOf(index) ?? _outputs[index].Key(generator);

    /// <summary>The group of an output; null where it has none.</summary>
    /// <param name="index">Which.</param>
    internal OutputGroup? GroupOf(int index) => _outputs.GroupOf(index);
}
