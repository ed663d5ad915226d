using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>Stands for all of a book but its jobs: texts by their content, other files by their name.</summary>
internal static class StandingMark
{
    /// <summary>The mark of a book.</summary>
    /// <param name="files">Its files.</param>
    /// <param name="hashes">Their hashes.</param>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static ContentHash Of(IBookFiles files, BookHashes hashes)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        foreach (var file in files.All.Where(f => !f.Path.StartsWith("jobs/", StringComparison.Ordinal)))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{file.Path}\0"));
            if (BookHashes.IsText(file.Path))
            {
                hashes.OfFile(file.Path).CopyTo(bytes);
                hash.AppendData(bytes);
            }
        }

        hash.GetHashAndReset(bytes);
        return ContentHash.Of(bytes);
    }
}
