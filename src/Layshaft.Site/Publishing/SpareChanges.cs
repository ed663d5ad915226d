using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Which files of a site an exchange brought: those added, changed or restored. There a file of the tree that was may be another than
/// the site's although size and time are the same, for a disk's clock may be coarse.
/// </summary>
/// <remarks>
/// Written before the exchange. Without a record that fits the site, the tree that was is cleared, and a spare is not used. One line
/// a path, below a head that names the site's list of files by its hash, and above a hash of all that, which shows any damage.
/// </remarks>
internal sealed class SpareChanges
{
    private const string Mark = "layshaft spare 1\n";
    private const string SecondNames = "second names";
    private const string Copies = "copies";

    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _paths;

    private SpareChanges(bool hasSecondNames, HashSet<string> paths) => (HasSecondNames, _paths) = (hasSecondNames, paths.GetAlternateLookup<ReadOnlySpan<char>>());

    /// <summary>Whether the kept files of both trees are one; as copies they would take the room twice, so that none is left.</summary>
    internal bool HasSecondNames { get; }

    /// <summary>The paths.</summary>
    internal IReadOnlyCollection<string> Paths => _paths.Set;

    internal bool Contains(ReadOnlySpan<char> path) => _paths.Contains(path);

    /// <summary>The record of the exchange that put a site in place; null where there is none, or one of another site.</summary>
    /// <param name="file">Where it is.</param>
    /// <param name="list">The hash of the site's list of files.</param>
    internal static SpareChanges? Read(string file, ContentHash list)
    {
        try
        {
            var bytes = File.ReadAllBytes(file).AsSpan();
            var end = bytes.Length - (2 * ContentHash.Bytes);
            if (end < 0 || ContentHash.Parse(Encoding.ASCII.GetString(bytes[end..])) != ContentHash.Of(SHA256.HashData(bytes[..end])))
            {
                return null;
            }

            var text = Encoding.ASCII.GetString(bytes[..end]);
            var head = Head(list);
            if (!text.StartsWith(head, StringComparison.Ordinal))
            {
                return null;
            }

            var lines = text[head.Length..].Split('\n', StringSplitOptions.RemoveEmptyEntries);
            return new(lines[0] == SecondNames, lines[1..].ToHashSet(StringComparer.Ordinal));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Writes the record. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="list">The hash of the new site's list of files.</param>
    /// <param name="hasSecondNames">Whether every kept file got a second name.</param>
    /// <param name="paths">What is added, changed or restored.</param>
    internal static void Write(Stream to, ContentHash list, bool hasSecondNames, IEnumerable<string> paths)
    {
        using var hashed = new HashingStream(to, leaveOpen: true);
        using (var text = new StreamWriter(hashed, Encoding.ASCII, 1 << 16, leaveOpen: true) { NewLine = "\n" })
        {
            text.Write(Head(list));
            text.WriteLine(hasSecondNames ? SecondNames : Copies);
            foreach (var path in paths)
            {
                text.WriteLine(path);
            }
        }

        to.Write(Encoding.ASCII.GetBytes(hashed.Hash().ToString()));
    }

    private static string Head(ContentHash list) => $"{Mark}{list}\n";
}
