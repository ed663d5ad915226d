namespace Layshaft.Site.Publishing;

/// <summary>Outputs that are made one after the other because they are made from the same things.</summary>
/// <param name="Name">Its name; outputs of groups of one name are one group.</param>
/// <param name="Finished">Called once no more of them are to be made, so that what they shared can be let go.</param>
public sealed record OutputGroup(string Name, Action Finished)
{
    /// <summary>
    /// Stands for all that decides which outputs the group has and what they are made from; null where that is not known. The
    /// next publish takes over a group of the same mark without asking what is in it.
    /// </summary>
    public ContentHash? Mark { get; init; }

    /// <summary>Of groups that wait in one queue one is made at a time, since each takes much memory; null for none.</summary>
    public string? Queue { get; init; }
}
