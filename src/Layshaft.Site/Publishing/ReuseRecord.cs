using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>What a file was made from, and its time when we last saw it whole.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Key">The key of its inputs, see <see cref="PlannedOutput"/>.</param>
/// <param name="Sha256">Its bytes' hash.</param>
/// <param name="Modified">Its time of change, in ticks.</param>
internal sealed record ReuseEntry(string Path, ContentHash Key, ContentHash Sha256, long Modified);

/// <summary>
/// Lets the next publish keep files without making or reading them. It is of this machine and stands outside the site,
/// which has no times in it; if it is lost, outputs are made again and nothing else happens.
/// </summary>
internal static class ReuseRecord
{
    private const string Mark = "layshaft reuse 2";

    internal static Dictionary<string, ReuseEntry> Read(string path)
    {
        var entries = new Dictionary<string, ReuseEntry>(StringComparer.Ordinal);
        try
        {
            using var reader = new BinaryReader(new BufferedStream(File.OpenRead(path), 1 << 16), Encoding.UTF8);
            if (reader.ReadString() != Mark)
            {
                return [];
            }

            Span<byte> hashes = stackalloc byte[2 * ContentHash.Bytes];
            for (var left = reader.ReadInt32(); left > 0; left--)
            {
                var name = reader.ReadString();
                reader.BaseStream.ReadExactly(hashes);
                entries[name] = new(name, ContentHash.Of(hashes), ContentHash.Of(hashes[ContentHash.Bytes..]), reader.ReadInt64());
            }

            return entries;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException)
        {
            return [];
        }
    }

    internal static byte[] Write(IReadOnlyCollection<ReuseEntry> entries)
    {
        using var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        writer.Write(Mark);
        writer.Write(entries.Count);
        Span<byte> hashes = stackalloc byte[2 * ContentHash.Bytes];
        foreach (var entry in entries)
        {
            writer.Write(entry.Path);
            entry.Key.CopyTo(hashes);
            entry.Sha256.CopyTo(hashes[ContentHash.Bytes..]);
            writer.Write(hashes);
            writer.Write(entry.Modified);
        }

        writer.Flush();
        return stream.ToArray();
    }
}
