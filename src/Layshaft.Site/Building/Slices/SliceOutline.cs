using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Building.Slices;

/// <summary>A slice of a book before its jobs are read: units that no others touch, and where all that they name stands.</summary>
/// <param name="Units">The units, by id.</param>
/// <param name="JobFiles">The paths of their jobs' files, in order.</param>
/// <param name="Shelves">The slice without its jobs.</param>
internal sealed record SliceOutline(IReadOnlyList<Unit> Units, IReadOnlyList<string> JobFiles, ShopBook Shelves)
{
    /// <summary>Its name, none like another's.</summary>
    public string Name => BookSlices.NameOf(Units);

    /// <summary>The folders of its jobs.</summary>
    public IEnumerable<string> JobFolders => JobFiles.Select(FolderOf);

    /// <summary>The folder of a job's file.</summary>
    public static string FolderOf(string jobFile) => jobFile[..jobFile.LastIndexOf('/')];

    /// <summary>All slices of a book.</summary>
    /// <param name="book">The book without its jobs.</param>
    /// <param name="jobs">The path of each job's file, with what ties it to the book.</param>
    /// <returns>In order of their first units; null when a job names a unit that the book does not have.</returns>
    public static IReadOnlyList<SliceOutline>? All(ShopBook book, IReadOnlyList<(string File, JobLinks Links)> jobs)
    {
        if (jobs.SelectMany(j => j.Links.Donors.Append(j.Links.Unit)).Any(u => !book.Units.ContainsKey(u)))
        {
            return null;
        }

        var ofUnit = jobs.ToLookup(j => j.Links.Unit, StringComparer.Ordinal);
        return [.. UnitClusters.Of(book.Units, jobs.Select(j => j.Links)).All.Select(ids => Of(book, [.. ids.Select(id => book.Units[id])], [.. ids.SelectMany(id => ofUnit[id])]))];
    }

    /// <summary>A slice.</summary>
    /// <param name="book">The book without its jobs.</param>
    /// <param name="units">The units of the slice.</param>
    /// <param name="jobs">The path of each of their jobs' files, with what ties it to the book.</param>
    public static SliceOutline Of(ShopBook book, IReadOnlyList<Unit> units, IReadOnlyList<(string File, JobLinks Links)> jobs) => new(
        units,
        [.. jobs.Select(j => j.File).Order(StringComparer.Ordinal)],
        SliceBook.Of(book, units, jobs.SelectMany(j => j.Links.Venues)));
}
