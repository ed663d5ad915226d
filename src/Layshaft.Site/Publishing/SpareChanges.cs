using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Which files of a site an exchange brought: those added, changed or restored. There a file of the tree that was may be another than
/// the site's although size and time are the same, for a disk's clock may be coarse.
/// </summary>
/// <remarks>
/// Written before the exchange. Without a record that fits the site, the tree that was is cleared, and a spare is not used. One line
/// a path, in order, below a head that names the site's list of files by its hash, and above a hash of all that, which shows any damage.
/// </remarks>
internal sealed class SpareChanges
{
    private const string Mark = "layshaft spare 1\n";
    private const string SecondNames = "second names";
    private const string Copies = "copies";

    private SpareChanges(bool hasSecondNames, PathTable paths) => (HasSecondNames, Paths) = (hasSecondNames, paths);

    /// <summary>Whether the kept files of both trees are one; as copies they would take the room twice, so that none is left.</summary>
    internal bool HasSecondNames { get; }

    /// <summary>The paths.</summary>
    internal PathTable Paths { get; }

    internal bool Contains(ReadOnlySpan<char> path) => Paths.IndexOf(path) >= 0;

    /// <summary>The record of the exchange that put a site in place; null where there is none, or one of another site.</summary>
    /// <param name="file">Where it is.</param>
    /// <param name="list">The hash of the site's list of files.</param>
    internal static SpareChanges? Read(string file, ContentHash list)
    {
        try
        {
            var bytes = RegularFile.ReadAll(file).AsSpan();
            var end = bytes.Length - (2 * ContentHash.Bytes);
            if (end < 0 || ContentHash.Parse(Encoding.ASCII.GetString(bytes[end..])) != ContentHash.Of(SHA256.HashData(bytes[..end])))
            {
                return null;
            }

            ReadOnlySpan<byte> whole = bytes[..end];
            var (head, copies) = (Head(list, hasSecondNames: true), Head(list, hasSecondNames: false));
            return whole.StartsWith(head) ? new(true, Lines(whole[head.Length..]))
                : whole.StartsWith(copies) ? new(false, Lines(whole[copies.Length..]))
                : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException)
        {
            return null;
        }
    }

    /// <summary>Writes the record. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="list">The hash of the new site's list of files.</param>
    /// <param name="hasSecondNames">Whether every kept file got a second name.</param>
    /// <param name="paths">What is added, changed or restored, in order.</param>
    internal static void Write(Stream to, ContentHash list, bool hasSecondNames, IEnumerable<string> paths)
    {
        using var hashed = new HashingStream(to, leaveOpen: true);
        hashed.Write(Head(list, hasSecondNames));
        using (var text = new StreamWriter(hashed, Encoding.ASCII, 1 << 16, leaveOpen: true) { NewLine = "\n" })
        {
            foreach (var path in paths)
            {
                text.WriteLine(path);
            }
        }

        to.Write(Encoding.ASCII.GetBytes(hashed.Hash().ToString()));
    }

    // Very many where a whole site was made anew, so they are not made into texts.
    private static PathTable Lines(ReadOnlySpan<byte> lines)
    {
        var ends = new int[lines.Count((byte)'\n')];
        var text = new byte[lines.Length - ends.Length];
        for (var (i, end) = (0, 0); i < ends.Length; i++)
        {
            var line = lines[..lines.IndexOf((byte)'\n')];
            line.CopyTo(text.AsSpan(end));
            ends[i] = end += line.Length;
            lines = lines[(line.Length + 1)..];
        }

        return PathTable.OfOrdered(text, ends);
    }

    private static byte[] Head(ContentHash list, bool hasSecondNames) => Encoding.ASCII.GetBytes($"{Mark}{list}\n{(hasSecondNames ? SecondNames : Copies)}\n");
}
