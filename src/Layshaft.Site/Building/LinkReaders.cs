using Layshaft.Site.Pages;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Building;

/// <summary>Lists whom each link of a site opens for.</summary>
internal static class LinkReaders
{
    /// <summary>The readers of all links, by unit and owner. The book's jobs do not matter.</summary>
    /// <param name="composition">What pages are composed from.</param>
    public static IReadOnlyList<LinkReader> Of(Composition composition) =>
    [
        .. composition.Book.Units.Values.SelectMany(u => OwnerView.Of(composition.Book, u)).Select(view =>
        {
            var customer = composition.Book.Customers[view.Owner.Customer];
            return new LinkReader(
                composition.Addresses.Folder(view),
                composition.Addresses.KeyOfPlace is { } key ? $"{Addresses.Customers}/{key(view)}" : string.Empty,
                view.Unit.Id,
                customer.Id,
                customer.Name,
                customer.Formerly,
                customer.Origin.At("name"));
        }),
    ];
}
