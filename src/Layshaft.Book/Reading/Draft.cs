using Layshaft.Book.Records;

namespace Layshaft.Book.Reading;

/// <summary>A book while it is being checked: some of its files may not have been readable.</summary>
internal sealed record Draft(
    IBookFiles Files,
    Shop? Shop,
    Shelf<Customer> Customers,
    Shelf<Gearbox> Gearboxes,
    Shelf<Car> Cars,
    Shelf<Venue> Venues,
    Shelf<Unit> Units,
    IReadOnlyList<Job> Jobs)
{
    public ShopBook ToBook(Shop shop) => new(shop, Customers.Records, Gearboxes.Records, Cars.Records, Venues.Records, Units.Records, Jobs);
}
