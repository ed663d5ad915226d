namespace Layshaft.Site.Publishing;

/// <summary>
/// A group of outputs that the site has already, all of them, by the mark under which it was recorded: what they are and what they were made
/// from stands in the register.
/// </summary>
/// <param name="Group">The group, with its mark.</param>
/// <param name="Maker">Makes those that have gone or were changed in the site.</param>
internal sealed record UnchangedGroup(OutputGroup Group, IOutputMaker Maker);
