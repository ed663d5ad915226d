using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace Layshaft.Book.Yaml;

/// <summary>
/// What the YAML files of a book were parsed to the last time. A file with the same bytes has the same nodes, whatever it is
/// called; so a file is known by the hash of its bytes, and a file in which anything was wrong is not remembered, but parsed again
/// for its problems. Losing the memory costs time and nothing else. For many threads at once.
/// </summary>
public sealed class NodeMemory
{
    private const int HashBytes = 32;

    private readonly ConcurrentDictionary<Key, ReadOnlyMemory<byte>> seen = new();
    private Dictionary<Key, ReadOnlyMemory<byte>> known = [];

    /// <summary>Whether files were seen since that were not known, or known ones were not seen.</summary>
    public bool HasNews => seen.Count != known.Count || seen.Keys.Any(k => !known.ContainsKey(k));

    /// <summary>The nodes of a file; null when it has to be parsed.</summary>
    /// <param name="content">Its bytes.</param>
    public Node? Recall(ReadOnlySpan<byte> content)
    {
        var key = KeyOf(content);
        if (!seen.TryGetValue(key, out var bytes) && !known.TryGetValue(key, out bytes))
        {
            return null;
        }

        try
        {
            var node = NodeBytes.Read(bytes.Span);
            seen[key] = bytes;
            return node;
        }
        catch (FormatException)
        {
            return null;
        }
    }

    /// <summary>Notes what a file was parsed to, if nothing was wrong in it.</summary>
    /// <param name="content">Its bytes.</param>
    /// <param name="root">Its nodes.</param>
    public void Note(ReadOnlySpan<byte> content, Node root)
    {
        ArgumentNullException.ThrowIfNull(root);
        seen[KeyOf(content)] = NodeBytes.Of(root);
    }

    /// <summary>Keeps what was seen for the next reading, and forgets what was not.</summary>
    public void Settle()
    {
        known = seen.ToDictionary();
        seen.Clear();
    }

    /// <summary>Reads a memory back. One that is of another program, or not whole, is empty.</summary>
    /// <param name="bytes">What <see cref="ToBytes"/> wrote.</param>
    /// <param name="mark">Stands for the program that parses.</param>
    public static NodeMemory Of(byte[] bytes, string mark)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var memory = new NodeMemory();
        if (bytes.Length < HashBytes || !SHA256.HashData(bytes.AsSpan(HashBytes)).AsSpan().SequenceEqual(bytes.AsSpan(0, HashBytes)))
        {
            return memory;
        }

        using var reader = new BinaryReader(new MemoryStream(bytes, HashBytes, bytes.Length - HashBytes), Encoding.UTF8);
        if (reader.ReadString() != mark)
        {
            return memory;
        }

        var count = reader.ReadInt32();
        memory.known = new Dictionary<Key, ReadOnlyMemory<byte>>(count);
        for (; count > 0; count--)
        {
            var key = new Key(reader.ReadUInt64(), reader.ReadUInt64());
            var length = reader.ReadInt32();
            memory.known[key] = bytes.AsMemory(HashBytes + (int)reader.BaseStream.Position, length);
            reader.BaseStream.Position += length;
        }

        return memory;
    }

    /// <summary>What was seen, as bytes: the same for the same files.</summary>
    /// <param name="mark">Stands for the program that parses.</param>
    public byte[] ToBytes(string mark)
    {
        using var stream = new MemoryStream();
        stream.Position = HashBytes;
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        writer.Write(mark);
        writer.Write(seen.Count);
        foreach (var (key, bytes) in seen.OrderBy(s => s.Key.First).ThenBy(s => s.Key.Second))
        {
            writer.Write(key.First);
            writer.Write(key.Second);
            writer.Write(bytes.Length);
            writer.Write(bytes.Span);
        }

        writer.Flush();
        var all = stream.ToArray();
        SHA256.HashData(all.AsSpan(HashBytes), all.AsSpan(0, HashBytes));
        return all;
    }

    private static Key KeyOf(ReadOnlySpan<byte> content)
    {
        Span<byte> hash = stackalloc byte[HashBytes];
        SHA256.HashData(content, hash);
        return new Key(BinaryPrimitives.ReadUInt64BigEndian(hash), BinaryPrimitives.ReadUInt64BigEndian(hash[sizeof(ulong)..]));
    }

    // Half a hash. Not as one wide number: what takes or gives such cannot be compiled ahead.
    private readonly record struct Key(ulong First, ulong Second);
}
