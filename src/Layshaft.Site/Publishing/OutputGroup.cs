namespace Layshaft.Site.Publishing;

/// <summary>Outputs that are made one after the other because they are made from the same things.</summary>
/// <param name="Name">Its name; outputs of groups of one name are one group.</param>
/// <param name="Finished">Called once no more of them are to be made, so that what they shared can be let go.</param>
public sealed record OutputGroup(string Name, Action Finished);
