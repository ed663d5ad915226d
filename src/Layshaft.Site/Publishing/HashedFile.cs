using System.Security.Cryptography;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>A file that begins with the hash of all that follows, so that any damage shows. Written as a stream: it may be large.</summary>
internal static class HashedFile
{
    /// <summary>Writes a file, unless the one that is there says the same.</summary>
    /// <param name="files">Writes it.</param>
    /// <param name="path">Where to.</param>
    /// <param name="write">Writes what follows the hash: where one may be there already twice, the same each time.</param>
    /// <param name="there">The hash of the one that is there; null to write it in any case.</param>
    /// <returns>The hash.</returns>
    internal static ContentHash Write(IFileWork files, string path, Action<Stream> write, ContentHash? there = null)
    {
        if (there is not null && HashOf(Stream.Null, write) is var same && same == there && File.Exists(path))
        {
            return same;
        }

        var hash = default(ContentHash);
        files.Replace(path, stream =>
        {
            Span<byte> head = stackalloc byte[ContentHash.Bytes];
            stream.Write(head);
            hash = HashOf(stream, write);
            hash.CopyTo(head);
            stream.Position = 0;
            stream.Write(head);
        });
        return hash;
    }

    /// <summary>Opens a file behind its hash.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="hash">The hash.</param>
    /// <exception cref="FormatException">What follows is not as it was written.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    internal static Stream OpenWhole(string path, out ContentHash hash)
    {
        var stream = new BufferedStream(RegularFile.Open(path), 1 << 16);
        try
        {
            hash = ContentHash.Read(stream);
            if (ContentHash.Of(SHA256.HashData(stream)) != hash)
            {
                throw new FormatException();
            }

            stream.Position = ContentHash.Bytes;
            return stream;
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    private static ContentHash HashOf(Stream to, Action<Stream> write)
    {
        using var hashed = new HashingStream(to, leaveOpen: true);
        write(hashed);
        return hashed.Hash();
    }
}
