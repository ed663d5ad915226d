namespace Layshaft.Site.Publishing;

/// <summary>Outputs that one thread makes, one after the other.</summary>
internal sealed class Batch
{
    private readonly CountdownEvent? _others;

    private Batch(IReadOnlyList<int> outputs, CountdownEvent? others) => (Outputs, _others) = (outputs, others);

    /// <summary>Their places in the plan, in the order in which they are made.</summary>
    internal IReadOnlyList<int> Outputs { get; }

    /// <summary>Shares outputs out: a group to a batch; where there are fewer groups than threads, a folder of a group to a batch.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="open">The outputs that are to be made.</param>
    /// <param name="threads">How many there are.</param>
    internal static IReadOnlyList<Batch> Of(SitePlan plan, IReadOnlyList<int> open, int threads)
    {
        IGrouping<string, int>[] groups = [.. open.GroupBy(i => plan.GroupOf(i) is { } group ? group.Queue ?? group.Name : plan.Paths.TextOf(i), StringComparer.Ordinal)];
        return [.. groups.SelectMany(g => groups.Length < threads && plan.GroupOf(g.First()) is { Queue: null } ? ByFolder(plan, g) : [new Batch(InTurn(plan, g), null)])];
    }

    /// <summary>To be called when those of a group are made: the last batch that has any lets go what they shared.</summary>
    /// <param name="group">The group; null for an output that has none.</param>
    internal void Finish(OutputGroup? group)
    {
        if (group is not null && _others?.Signal() != false)
        {
            group.Finished();
        }
    }

    private static Batch[] ByFolder(SitePlan plan, IEnumerable<int> outputs)
    {
        int[][] folders = [.. outputs.GroupBy(i => Path.GetDirectoryName(plan.Paths.TextOf(i)), StringComparer.Ordinal).Select(f => InTurn(plan, f))];
        var others = new CountdownEvent(folders.Length);
        return [.. folders.Select(f => new Batch(f, others))];
    }

    private static int[] InTurn(SitePlan plan, IEnumerable<int> outputs) => [.. outputs.OrderBy(i => plan.Outputs[i].Turn)];
}
