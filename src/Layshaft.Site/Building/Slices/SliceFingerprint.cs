using Layshaft.Book.Reading;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Slices;

/// <summary>Stands for a slice of a book and all that its pages are made with; a slice of the same mark need not be read again.</summary>
/// <param name="hashes">Hashes of the book's text files.</param>
/// <param name="files">The book's files.</param>
/// <param name="site">Stands for templates, texts and keys.</param>
/// <param name="began">When the book was looked through, in ticks.</param>
internal sealed class SliceFingerprint(BookHashes hashes, IBookFiles files, PlanInput site, long began)
{
    /// <summary>
    /// The mark of a slice: texts count by their content, pictures by size and time. Null where a picture is so young that a
    /// change within one tick of the disk's clock would not show in its time.
    /// </summary>
    /// <param name="slice">The slice.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public ContentHash? Of(SliceOutline slice)
    {
        BookFile[] others = [.. slice.JobFolders.SelectMany(f => files.Below($"{f}/")).Where(f => !BookHashes.IsText(f.Path))];
        return others.Any(f => f.Modified <= 0 || f.Modified >= DiskClock.FreshFrom(began))
            ? null
            : PlannedOutput.KeyOf(
                ProgramFingerprint.Value,
                [
                    new PlanInput("texts", hashes.Of(SliceBook.TextsOf(slice.Shelves, slice.JobFolders, files))),
                    new PlanInput("other files", string.Join('\n', others.Select(f => FormattableString.Invariant($"{f.Path} {f.Length} {f.Modified}")))),
                    site,
                ]);
    }
}
