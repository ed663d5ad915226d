namespace Layshaft.Site.Publishing;

/// <summary>Outputs that one thread makes, one after the other.</summary>
internal sealed class Batch
{
    private readonly CountdownEvent? _others;

    private Batch(IEnumerable<int> outputs, SitePlan plan, CountdownEvent? others = null) =>
        (Outputs, _others) = ([.. outputs.OrderBy(i => plan.Outputs[i].Turn)], others);

    /// <summary>Their places in the plan, in the order in which they are made.</summary>
    internal IReadOnlyList<int> Outputs { get; }

    /// <summary>Shares outputs out: a group to a batch; where there are fewer groups than threads, a folder of a group to a batch.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="open">The outputs that are to be made.</param>
    /// <param name="threads">How many there are.</param>
    internal static IReadOnlyList<Batch> ShareOut(SitePlan plan, IReadOnlyList<int> open, int threads)
    {
        IGrouping<string, int>[] groups = [.. open.GroupBy(i => plan.Outputs[i] is { Group: { } group } ? group.Queue ?? group.Name : plan.Outputs[i].Path, StringComparer.Ordinal)];
        return [.. groups.SelectMany(g => groups.Length < threads && plan.Outputs[g.First()].Group is { Queue: null } ? ByFolder(plan, g) : [new Batch(g, plan)])];
    }

    /// <summary>To be called when those of a group are made: the last batch that has any releases what they shared.</summary>
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
        IGrouping<string?, int>[] folders = [.. outputs.GroupBy(i => Path.GetDirectoryName(plan.Outputs[i].Path), StringComparer.Ordinal)];
        var others = new CountdownEvent(folders.Length);
        return [.. folders.Select(f => new Batch(f, plan, others))];
    }
}
