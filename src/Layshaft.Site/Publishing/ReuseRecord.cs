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
internal sealed class ReuseRecord
{
    private const string Mark = "layshaft reuse 3";

    private readonly Dictionary<string, ReuseEntry> _entries = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ReuseEntry>.AlternateLookup<ReadOnlySpan<char>> _bySpan;

    private ReuseRecord(long noted)
    {
        Noted = noted;
        _bySpan = _entries.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>A record of nothing.</summary>
    internal static ReuseRecord None { get; } = new(0);

    /// <summary>What is recorded, in order of path.</summary>
    internal IReadOnlyCollection<ReuseEntry> Entries => _entries.Values;

    /// <summary>The hash of the record as it was read; null for a record of nothing.</summary>
    internal ContentHash? Hash { get; private set; }

    /// <summary>When it was written, in ticks.</summary>
    internal long Noted { get; }

    /// <summary>What is recorded of a file, or null.</summary>
    internal ReuseEntry? Find(string path) => _entries.GetValueOrDefault(path);

    /// <summary>The text of a path: the record's own where it has the path.</summary>
    internal string TextOf(ReadOnlySpan<char> path) => _bySpan.TryGetValue(path, out var text, out _) ? text : path.ToString();

    /// <summary>Reads a record. One that is missing or damaged records nothing.</summary>
    /// <param name="path">Where it is.</param>
    internal static ReuseRecord Read(string path)
    {
        try
        {
            var record = new ReuseRecord(File.GetLastWriteTimeUtc(path).Ticks);
            return record.ReadFile(path) ? record : None;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException)
        {
            return None;
        }
    }

    private bool ReadFile(string path)
    {
        using var reader = new BinaryReader(new BufferedStream(File.OpenRead(path), 1 << 16), Encoding.UTF8);

        // A damaged path would be planned as a file of its own, so the whole must be as it was written.
        var whole = ReadHash(reader);
        if (ContentHash.Of(SHA256.HashData(reader.BaseStream)) != whole)
        {
            return false;
        }

        reader.BaseStream.Position = ContentHash.Bytes;
        if (reader.ReadString() != Mark)
        {
            return false;
        }

        var groups = new ContentHash?[reader.ReadInt32() + 1];
        for (var group = 1; group < groups.Length; group++)
        {
            groups[group] = ReadHash(reader);
        }

        var left = reader.ReadInt32();
        _entries.EnsureCapacity(left);
        for (; left > 0; left--)
        {
            var name = reader.ReadString();
            _entries[name] = new(name, ReadHash(reader), ReadHash(reader), reader.ReadInt64(), groups[reader.Read7BitEncodedInt()]);
        }

        Hash = whole;
        return true;
    }

    /// <summary>Writes a record, unless the one that is there says the same.</summary>
    /// <param name="files">Writes it.</param>
    /// <param name="path">Where to.</param>
    /// <param name="entries">What it is to record; gone through several times, since there may be very many.</param>
    /// <param name="there">The hash of the one that is there; null to write it in any case, so that its own time is that of now.</param>
    internal static void Write(IFileWork files, string path, IEnumerable<ReuseEntry> entries, ContentHash? there = null) =>
        HashedFile.Write(files, path, stream => Write(stream, entries), there);

    private static void Write(Stream stream, IEnumerable<ReuseEntry> entries)
    {
        // Not disposed: that would close the stream, which is the caller's.
        var buffer = new BufferedStream(stream, 1 << 16);
        using var writer = new BinaryWriter(buffer, Encoding.UTF8, leaveOpen: true);
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

        writer.Write(entries.Count());
        foreach (var entry in entries)
        {
            writer.Write(entry.Path);
            WriteHash(writer, entry.Key);
            WriteHash(writer, entry.Sha256);
            writer.Write(entry.Modified);
            writer.Write7BitEncodedInt(entry.Group is { } group ? groups[group] : 0);
        }

        writer.Flush();
        buffer.Flush();
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
