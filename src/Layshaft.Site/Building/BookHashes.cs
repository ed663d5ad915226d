using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>Hashes of the book's text files, each read no more than once. For many threads at once.</summary>
/// <param name="files">The book's files.</param>
/// <param name="memory">What is known of files from the publish before; null to open each.</param>
internal sealed class BookHashes(IBookFiles files, FileCache? memory = null)
{
    private static readonly string[] Texts = [".yaml", ".md", ".csv"];

    private readonly ConcurrentDictionary<string, ContentHash> _hashes = new(StringComparer.Ordinal);

    /// <summary>Whether pages may quote from a file; all others but the pictures are left alone.</summary>
    public static bool IsText(string path) => Texts.Contains(Path.GetExtension(path));

    /// <summary>One hash over paths and contents of files, in the order given.</summary>
    /// <param name="paths">Paths in the book.</param>
    /// <param name="more">Other words that belong to it.</param>
    public string Of(IEnumerable<string> paths, string more = "")
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        foreach (var path in paths)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}\0"));
            OfFile(path).CopyTo(bytes);
            hash.AppendData(bytes);
        }

        hash.AppendData(Encoding.UTF8.GetBytes(more));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>The hash of a file's content.</summary>
    /// <param name="path">Path in the book.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public ContentHash OfFile(string path) => _hashes.GetOrAdd(path, p =>
    {
        var file = files.Below(p).Take(1).FirstOrDefault(f => f.Path == p);
        if (file is not null && memory?.HashOf(file) is { } known)
        {
            return known;
        }

        using var stream = files.Open(p);
        var hash = ContentHash.Of(SHA256.HashData(stream));
        if (file is not null)
        {
            memory?.Note(file, hash);
        }

        return hash;
    });
}
