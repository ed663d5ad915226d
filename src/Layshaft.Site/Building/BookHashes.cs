using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Building;

/// <summary>Hashes of the book's text files, each read once.</summary>
/// <param name="files">The book's files.</param>
internal sealed class BookHashes(IBookFiles files)
{
    private static readonly string[] Texts = [".yaml", ".md", ".csv"];

    private readonly Dictionary<string, byte[]> _hashes = new(StringComparer.Ordinal);

    /// <summary>Whether pages may quote from a file; all others but the pictures are left alone.</summary>
    public static bool IsText(string path) => Texts.Contains(Path.GetExtension(path));

    /// <summary>One hash over paths and contents of files, in the order given.</summary>
    /// <param name="paths">Paths in the book.</param>
    /// <param name="more">Other words that belong to it.</param>
    public string Of(IEnumerable<string> paths, string more = "")
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var path in paths)
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{path}\0"));
            hash.AppendData(OfFile(path));
        }

        hash.AppendData(Encoding.UTF8.GetBytes(more));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private byte[] OfFile(string path)
    {
        if (!_hashes.TryGetValue(path, out var hash))
        {
            using var stream = files.Open(path);
            _hashes[path] = hash = SHA256.HashData(stream);
        }

        return hash;
    }
}
