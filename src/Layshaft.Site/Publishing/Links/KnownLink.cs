namespace Layshaft.Site.Publishing.Links;

/// <summary>A link that the site has or had, and its one reader.</summary>
/// <param name="Folder">The folder that it leads to, from the output folder: <c>customers/KEY</c>.</param>
/// <param name="Unit">The unit's id.</param>
/// <param name="Customer">The customer's id.</param>
/// <param name="Name">The customer's name.</param>
/// <param name="IsOpen">Whether the site has its pages; otherwise it is withdrawn.</param>
public sealed record KnownLink(string Folder, string Unit, string Customer, string Name, bool IsOpen);
