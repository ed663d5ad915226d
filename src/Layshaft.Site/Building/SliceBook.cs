using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Site.Building;

/// <summary>What a slice of a book holds besides its jobs, and in which files it all stands.</summary>
internal static class SliceBook
{
    /// <summary>The book with nothing in it but some units and what they and their jobs name; without jobs.</summary>
    /// <param name="book">The book.</param>
    /// <param name="units">The units.</param>
    /// <param name="venues">The ids of the venues that their jobs name.</param>
    public static ShopBook Of(ShopBook book, IReadOnlyList<Unit> units, IEnumerable<string> venues) => book with
    {
        Units = units.ToDictionary(u => u.Id, StringComparer.Ordinal),
        Gearboxes = Some(book.Gearboxes, units.Select(u => u.Gearbox)),
        Cars = Some(book.Cars, units.Select(u => u.Car).OfType<string>()),
        Customers = Some(book.Customers, units.SelectMany(u => u.Owners).Select(o => o.Customer)),
        Venues = Some(book.Venues, venues),
        Jobs = [],
    };

    /// <summary>The paths of all text files of a slice, in order.</summary>
    /// <param name="slice">The slice, with or without its jobs.</param>
    /// <param name="jobFolders">The folders of its jobs.</param>
    /// <param name="files">The book's files.</param>
    public static IEnumerable<string> TextsOf(ShopBook slice, IEnumerable<string> jobFolders, IBookFiles files)
    {
        string[] records =
        [
            BookLayout.ShopFile,
            .. slice.Gearboxes.Keys.Select(id => $"gearboxes/{id}.yaml"),
            .. slice.Cars.Values.SelectMany(c => c.Engine.CurveFile is { } curve ? new[] { $"cars/{c.Id}.yaml", $"cars/{curve}" } : [$"cars/{c.Id}.yaml"]),
            .. slice.Customers.Keys.Select(id => $"customers/{id}.yaml"),
            .. slice.Venues.Keys.Select(id => $"venues/{id}.yaml"),
            .. slice.Units.Keys.Select(id => $"units/{id}.yaml"),
        ];
        return records.Concat(jobFolders.SelectMany(f => files.Below($"{f}/")).Select(f => f.Path).Where(BookHashes.IsText)).Order(StringComparer.Ordinal);
    }

    /// <summary>Those of some keys that are there.</summary>
    public static SortedDictionary<string, T> Some<T>(IReadOnlyDictionary<string, T> all, IEnumerable<string> keys)
    {
        var some = new SortedDictionary<string, T>(StringComparer.Ordinal);
        foreach (var key in keys)
        {
            if (all.TryGetValue(key, out var value))
            {
                some[key] = value;
            }
        }

        return some;
    }
}
