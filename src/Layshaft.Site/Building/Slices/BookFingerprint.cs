using System.Globalization;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Building.Slices;

/// <summary>Stands for all of a book but its jobs: texts by their content, other files by their name; of the jobs the latest year, which dates are checked against.</summary>
internal static class BookFingerprint
{
    /// <summary>The mark of a book.</summary>
    /// <param name="files">Its files.</param>
    /// <param name="hashes">Their hashes.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static string Of(IBookFiles files, BookHashes hashes) => hashes.Of(Texts(files), string.Join('\n', Paths(files).Where(p => !BookHashes.IsText(p)).Append(string.Create(CultureInfo.InvariantCulture, $"{BookLayout.LatestYear(files)}"))));

    /// <summary>The paths of its texts.</summary>
    /// <param name="files">The book's files.</param>
    public static IEnumerable<string> Texts(IBookFiles files) => Paths(files).Where(BookHashes.IsText);

    private static IEnumerable<string> Paths(IBookFiles files) => files.All.Select(f => f.Path).Where(p => !p.StartsWith("jobs/", StringComparison.Ordinal));
}
