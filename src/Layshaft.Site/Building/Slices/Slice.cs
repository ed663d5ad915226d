using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Building;

/// <summary>A slice of a book before its jobs are read: units that no others touch, and all that they and their jobs name.</summary>
/// <param name="Units">The units, by id.</param>
/// <param name="JobFiles">The paths of their jobs' files, in order.</param>
/// <param name="WithoutJobs">The slice without its jobs.</param>
internal sealed record Slice(IReadOnlyList<Unit> Units, IReadOnlyList<string> JobFiles, ShopBook WithoutJobs)
{
    /// <summary>Its name, none like another's.</summary>
    public string Name => NameOf(Units[0].Id);

    /// <summary>The folders of its jobs.</summary>
    public IEnumerable<string> JobFolders => JobFiles.Select(FolderOf);

    /// <summary>The folder of a job's file.</summary>
    public static string FolderOf(string jobFile) => jobFile[..jobFile.LastIndexOf('/')];

    /// <summary>The name of a slice.</summary>
    /// <param name="firstUnit">The id of the first of its units.</param>
    public static string NameOf(string firstUnit) => $"unit {firstUnit}";

    /// <summary>Cuts a book into all its slices.</summary>
    /// <param name="book">The book without its jobs.</param>
    /// <param name="jobs">The path of each job's file, with what connects it with the book.</param>
    /// <returns>In order of their first units; null when a job names a unit that the book does not have.</returns>
    public static IReadOnlyList<Slice>? CutAll(ShopBook book, IReadOnlyList<(string File, JobLinks Links)> jobs)
    {
        if (jobs.SelectMany(j => j.Links.Donors.Append(j.Links.Unit)).Any(u => !book.Units.ContainsKey(u)))
        {
            return null;
        }

        var ofUnit = jobs.ToLookup(j => j.Links.Unit, StringComparer.Ordinal);
        return [.. UnitClusters.Of(book.Units, jobs.Select(j => j.Links)).All.Select(ids => Cut(book, [.. ids.Select(id => book.Units[id])], [.. ids.SelectMany(id => ofUnit[id])]))];
    }

    /// <summary>Cuts a slice.</summary>
    /// <param name="book">The book without its jobs.</param>
    /// <param name="units">The units of the slice.</param>
    /// <param name="jobs">The path of each of their jobs' files, with what connects it with the book.</param>
    public static Slice Cut(ShopBook book, IReadOnlyList<Unit> units, IReadOnlyList<(string File, JobLinks Links)> jobs) => new(
        units,
        [.. jobs.Select(j => j.File).Order(StringComparer.Ordinal)],
        book with
        {
            Units = units.ToDictionary(u => u.Id, StringComparer.Ordinal),
            Gearboxes = Some(book.Gearboxes, units.Select(u => u.Gearbox)),
            Cars = Some(book.Cars, units.Select(u => u.Car).OfType<string>()),
            Customers = Some(book.Customers, units.SelectMany(u => u.Owners).Select(o => o.Customer)),
            Venues = Some(book.Venues, jobs.SelectMany(j => j.Links.Venues)),
            Jobs = [],
        });

    /// <summary>The paths of all its text files, in order.</summary>
    /// <param name="files">The book's files.</param>
    public IEnumerable<string> Texts(IBookFiles files)
    {
        string[] records =
        [
            BookLayout.ShopFile,
            .. WithoutJobs.Gearboxes.Keys.Select(id => $"gearboxes/{id}.yaml"),
            .. WithoutJobs.Cars.Values.SelectMany(c => c.Engine.CurveFile is { } curve ? new[] { $"cars/{c.Id}.yaml", $"cars/{curve}" } : [$"cars/{c.Id}.yaml"]),
            .. WithoutJobs.Customers.Keys.Select(id => $"customers/{id}.yaml"),
            .. WithoutJobs.Venues.Keys.Select(id => $"venues/{id}.yaml"),
            .. WithoutJobs.Units.Keys.Select(id => $"units/{id}.yaml"),
        ];
        return records.Concat(Files(files).Select(f => f.Path).Where(BookHashes.IsText)).Order(StringComparer.Ordinal);
    }

    /// <summary>All files in the folders of its jobs.</summary>
    /// <param name="files">The book's files.</param>
    public IEnumerable<BookFile> Files(IBookFiles files) => JobFolders.SelectMany(f => files.Below($"{f}/"));

    private static SortedDictionary<string, T> Some<T>(IReadOnlyDictionary<string, T> all, IEnumerable<string> keys)
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
