namespace Layshaft.Book.Reading;

/// <summary>Looks up the files of one folder of a book.</summary>
public static class BookFolders
{
    /// <summary>The files whose path begins with a text, found by halving: a book may have very many files.</summary>
    /// <param name="files">The book's files.</param>
    /// <param name="start">A folder with a slash at its end.</param>
    public static IEnumerable<BookFile> Below(this IBookFiles files, string start)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(start);
        var all = files.All;
        var (low, high) = (0, all.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (string.CompareOrdinal(all[middle].Path, start) < 0)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        for (var i = low; i < all.Count && all[i].Path.StartsWith(start, StringComparison.Ordinal); i++)
        {
            yield return all[i];
        }
    }
}
