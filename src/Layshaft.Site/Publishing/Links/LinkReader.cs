using Layshaft.Book.Places;

namespace Layshaft.Site.Publishing.Links;

/// <summary>Whom a link of the site to be opens for.</summary>
/// <param name="Folder">The folder that the link leads to, from the output folder: <c>customers/KEY</c>.</param>
/// <param name="FolderOfPlace">The folder that this owner's pages had under the earlier keys, see <see cref="CustomerKeys.OfPlace"/>; empty for none.</param>
/// <param name="Unit">The unit's id.</param>
/// <param name="Customer">The customer's id.</param>
/// <param name="Name">The customer's name.</param>
/// <param name="Formerly">An earlier name of the same customer; null for none.</param>
/// <param name="Place">Where the book has the name.</param>
public sealed record LinkReader(string Folder, string FolderOfPlace, string Unit, string Customer, string Name, string? Formerly, Place Place);
