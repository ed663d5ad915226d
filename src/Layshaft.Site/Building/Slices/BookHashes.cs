using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Hashes of the book's text files, each read no more than once, and what keys are made of them. For many threads at once.</summary>
/// <param name="files">The book's files.</param>
/// <param name="cache">What is known of files from the publish before; null to open each.</param>
/// <param name="began">When the book was scanned, in ticks.</param>
internal sealed class BookHashes(IBookFiles files, FileCache? cache = null, long began = 0)
{
    private static readonly string[] Texts = [".yaml", ".md", ".csv"];

    private readonly ConcurrentDictionary<string, ContentHash> _hashes = new(StringComparer.Ordinal);

    /// <summary>Whether pages may quote from a file; all others but the images are left alone.</summary>
    public static bool IsText(string path) => Texts.Contains(Path.GetExtension(path));

    /// <summary>What a page says of images: it follows from their sizes alone; an image itself is a file of its own.</summary>
    public static string SizesOf(PictureIndex pictures) => string.Join(
        '\n', pictures.Usable.Values.OrderBy(p => p.Path, StringComparer.Ordinal).Select(p => FormattableString.Invariant($"{p.Path} {p.Large} {p.Middle} {p.Small}")));

    /// <summary>The input of pages: texts of the book and the sizes of images.</summary>
    /// <param name="name">The input's name.</param>
    /// <param name="paths">Paths in the book; of these the texts count.</param>
    /// <param name="pictures">The images.</param>
    public PlanInput InputOf(string name, IEnumerable<string> paths, PictureIndex pictures) => new(name, HashAll(paths.Where(IsText), SizesOf(pictures)));

    /// <summary>The hash of all of a book but its jobs: texts by their content, other files by their name; of the jobs the latest year, which dates are checked against.</summary>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public string HashWithoutJobs() => HashAll(
        WithoutJobs().Where(IsText),
        string.Join('\n', WithoutJobs().Where(p => !IsText(p)).Append(string.Create(CultureInfo.InvariantCulture, $"{BookLayout.LatestYear(files)}"))));

    /// <summary>The paths of all files but those of jobs.</summary>
    public IEnumerable<string> WithoutJobs() => files.All.Select(f => f.Path).Where(p => !p.StartsWith("jobs/", StringComparison.Ordinal));

    /// <summary>
    /// The mark of a slice: the hash of all that it is made from. Texts count by their content, images by size and time. Null where an image
    /// is so young that a change within one tick of the disk's clock would not show in its time.
    /// </summary>
    /// <param name="slice">The slice.</param>
    /// <param name="site">The hash of templates, texts and keys.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public ContentHash? MarkOf(Slice slice, PlanInput site)
    {
        BookFile[] others = [.. slice.Files(files).Where(f => !IsText(f.Path))];
        return others.Any(f => f.Modified <= 0 || f.Modified >= DiskClock.FreshFrom(began))
            ? null
            : PlannedOutput.KeyOf(
                ProgramFingerprint.Value,
                [
                    new PlanInput("texts", HashAll(slice.Texts(files))),
                    new PlanInput("other files", string.Join('\n', others.Select(f => FormattableString.Invariant($"{f.Path} {f.Length} {f.Modified}")))),
                    site,
                ]);
    }

    /// <summary>One hash over paths and contents of files, in the order given.</summary>
    /// <param name="paths">Paths in the book.</param>
    /// <param name="more">Other text that belongs to it.</param>
    public string HashAll(IEnumerable<string> paths, string more = "")
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        foreach (var path in paths)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}\0"));
            HashFile(path).CopyTo(bytes);
            hash.AppendData(bytes);
        }

        hash.AppendData(Encoding.UTF8.GetBytes(more));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>The hash of a file's content.</summary>
    /// <param name="path">Path in the book.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public ContentHash HashFile(string path) => _hashes.GetOrAdd(path, p =>
    {
        var file = files.Below(p).Take(1).FirstOrDefault(f => f.Path == p);
        if (file is not null && cache?.HashOf(file) is { } known)
        {
            return known;
        }

        using var stream = files.Open(p);
        var hash = ContentHash.Of(SHA256.HashData(stream));
        if (file is not null)
        {
            cache?.Note(file, hash);
        }

        return hash;
    });
}
