using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>What a file was made from, and its time when we last saw it whole.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Key">The key of its inputs, see <see cref="PlannedOutput"/>.</param>
/// <param name="Sha256">Its bytes' hash.</param>
/// <param name="Modified">Its time of change, in ticks.</param>
/// <param name="Group">The mark of its group, see <see cref="OutputGroup"/>; null where it has none.</param>
internal sealed record ReuseEntry(string Path, ContentHash Key, ContentHash Sha256, long Modified, ContentHash? Group = null);

/// <summary>
/// Lets the next publish keep files without making or reading them. It is of this machine and stands outside the site,
/// which has no times in it; if it is lost, outputs are made again and nothing else happens.
/// </summary>
internal static class ReuseRecord
{
    private const string Mark = "layshaft reuse 3";

    internal static Dictionary<string, ReuseEntry> Read(string path)
    {
        var entries = new Dictionary<string, ReuseEntry>(StringComparer.Ordinal);
        try
        {
            using var reader = new BinaryReader(new BufferedStream(File.OpenRead(path), 1 << 16), Encoding.UTF8);

            // A damaged path would be planned as a file of its own, so the whole must be as it was written.
            var whole = ReadHash(reader);
            if (ContentHash.Of(SHA256.HashData(reader.BaseStream)) != whole)
            {
                return [];
            }

            reader.BaseStream.Position = ContentHash.Bytes;
            if (reader.ReadString() != Mark)
            {
                return [];
            }

            var groups = new ContentHash?[reader.ReadInt32() + 1];
            for (var group = 1; group < groups.Length; group++)
            {
                groups[group] = ReadHash(reader);
            }

            for (var left = reader.ReadInt32(); left > 0; left--)
            {
                var name = reader.ReadString();
                entries[name] = new(name, ReadHash(reader), ReadHash(reader), reader.ReadInt64(), groups[reader.Read7BitEncodedInt()]);
            }

            return entries;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or IndexOutOfRangeException or OverflowException)
        {
            return [];
        }
    }

    internal static byte[] Write(IReadOnlyCollection<ReuseEntry> entries)
    {
        using var stream = new MemoryStream();
        stream.Position = ContentHash.Bytes;
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        writer.Write(Mark);
        var groups = new Dictionary<ContentHash, int>();
        foreach (var group in entries.Select(e => e.Group).OfType<ContentHash>())
        {
            groups.TryAdd(group, groups.Count + 1);
        }

        writer.Write(groups.Count);
        foreach (var group in groups.Keys)
        {
            WriteHash(writer, group);
        }

        writer.Write(entries.Count);
        foreach (var entry in entries)
        {
            writer.Write(entry.Path);
            WriteHash(writer, entry.Key);
            WriteHash(writer, entry.Sha256);
            writer.Write(entry.Modified);
            writer.Write7BitEncodedInt(entry.Group is { } group ? groups[group] : 0);
        }

        writer.Flush();
        var all = stream.ToArray();
        SHA256.HashData(all.AsSpan(ContentHash.Bytes), all.AsSpan(0, ContentHash.Bytes));
        return all;
    }

    private static ContentHash ReadHash(BinaryReader reader)
    {
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        reader.BaseStream.ReadExactly(bytes);
        return ContentHash.Of(bytes);
    }

    private static void WriteHash(BinaryWriter writer, ContentHash hash)
    {
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        hash.CopyTo(bytes);
        writer.Write(bytes);
    }
}
