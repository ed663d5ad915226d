using System.Buffers.Binary;
using System.Collections.Concurrent;
using Layshaft.Book.Reading;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Building;

/// <summary>
/// What is known of the book's files from the publish before: one of the same size and time need not be opened again. Losing
/// it costs time and nothing else. For many threads at once.
/// </summary>
public sealed class FileCache
{
    private readonly long _began = DateTime.UtcNow.Ticks;
    private readonly PathTable _paths;
    private readonly Row[] _known;
    private readonly bool[] _seen;
    private readonly ConcurrentDictionary<string, Row> _new = new(StringComparer.Ordinal);

    private FileCache(PathTable paths, Row[] known) => (_paths, _known, _seen) = (paths, known, new bool[known.Length]);

    /// <summary>What is known of a picture; null when it has to be opened.</summary>
    internal UsablePicture? Recall(BookFile file) => Find(file) is { IsPicture: true } row ? row.ToPicture(file.Path) : null;

    /// <summary>The hash of a file's content; null when it has to be opened.</summary>
    internal ContentHash? HashOf(BookFile file) => Find(file) is { } row && row.Hash != default ? row.Hash : null;

    /// <summary>Keeps what is known of a file, if anything is, for the next publish too.</summary>
    /// <returns>Whether anything is: then it is as it was when it was noted.</returns>
    internal bool Keep(BookFile file) => Find(file) is not null;

    /// <summary>Notes that a file is there, unless more is known of it, for the next publish to see whether it is as it was: one that nobody opens.</summary>
    internal void See(BookFile file)
    {
        if (!Keep(file))
        {
            Note(file, default(ContentHash));
        }
    }

    /// <summary>The paths below a folder of which something is known, and no file was asked for that is so.</summary>
    /// <param name="folder">The folder.</param>
    internal IEnumerable<string> Unseen(string folder) => _paths.Below(folder).Where(i => !_seen[i]).Select(_paths.TextOf);

    /// <summary>Notes a picture in which nothing was wrong.</summary>
    internal void Note(BookFile file, UsablePicture picture)
    {
        if (ContentHash.Parse(picture.Hash) is { } hash)
        {
            Note(file.Path, new(file.Length, file.Modified, hash, picture.Large, picture.Middle, picture.Small));
        }
    }

    /// <summary>Notes the hash of a text's content.</summary>
    internal void Note(BookFile file, ContentHash hash) => Note(file.Path, new(file.Length, file.Modified, hash, default, default, default));

    private void Note(string path, Row row)
    {
        // A change within one tick of the disk's clock would not show in the time of so young a file.
        if (row.Modified > 0 && row.Modified < DiskClock.FreshFrom(_began))
        {
            _new[path] = row;
        }
    }

    private Row? Find(BookFile file)
    {
        var index = _paths.IndexOf(file.Path);
        if (index < 0 || _known[index].Length != file.Length || _known[index].Modified != file.Modified)
        {
            return _new.TryGetValue(file.Path, out var row) ? row : null;
        }

        _seen[index] = true;
        return _known[index];
    }

    /// <summary>What is known where nothing was kept.</summary>
    internal static FileCache Empty() => new(PathTable.None, []);

    /// <summary>Reads what was kept.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="FormatException">It is something else.</exception>
    /// <exception cref="IOException">There is less than it says.</exception>
    internal static FileCache Read(BinaryReader reader)
    {
        // Other picture code may give other sizes.
        var isOurs = reader.ReadString() == PictureFingerprint.Value;
        var paths = PathTable.Read(reader);
        var known = new Row[paths.Count];
        Span<byte> bytes = stackalloc byte[Row.Bytes];
        for (var i = 0; i < known.Length; i++)
        {
            reader.BaseStream.ReadExactly(bytes);
            known[i] = Row.Of(bytes);
        }

        return isOurs ? new(paths, known) : Empty();
    }

    /// <summary>Writes what was seen, for the next publish; files of other books and those that are gone are forgotten.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        var noted = _new.ToArray();
        var isKept = _seen.ToArray();
        foreach (var place in noted.Select(n => _paths.IndexOf(n.Key)).Where(p => p >= 0))
        {
            isKept[place] = false;
        }

        writer.Write(PictureFingerprint.Value);
        int[] kept = [.. Enumerable.Range(0, isKept.Length).Where(i => isKept[i])];
        _paths.With(kept, [.. noted.Select(n => new PlacedPath(n.Key))], out var order).Write(writer);
        Span<byte> bytes = stackalloc byte[Row.Bytes];
        foreach (var place in order)
        {
            (place < kept.Length ? _known[kept[place]] : noted[place - kept.Length].Value).CopyTo(bytes);
            writer.Write(bytes);
        }
    }

    private readonly record struct Row(long Length, long Modified, ContentHash Hash, (int Width, int Height) Large, (int Width, int Height) Middle, (int Width, int Height) Small)
    {
        internal const int Bytes = (2 * sizeof(long)) + ContentHash.Bytes + (6 * sizeof(int));

        private const int Sizes = (2 * sizeof(long)) + ContentHash.Bytes;

        internal bool IsPicture => Large != default;

        internal static Row Of(ReadOnlySpan<byte> bytes) => new(
            BinaryPrimitives.ReadInt64LittleEndian(bytes),
            BinaryPrimitives.ReadInt64LittleEndian(bytes[sizeof(long)..]),
            ContentHash.Of(bytes[(2 * sizeof(long))..]),
            Size(bytes, 0),
            Size(bytes, 1),
            Size(bytes, 2));

        internal UsablePicture ToPicture(string path) => new(path, Large, Small) { Middle = Middle, Hash = Hash.ToString() };

        internal void CopyTo(Span<byte> bytes)
        {
            BinaryPrimitives.WriteInt64LittleEndian(bytes, Length);
            BinaryPrimitives.WriteInt64LittleEndian(bytes[sizeof(long)..], Modified);
            Hash.CopyTo(bytes[(2 * sizeof(long))..]);
            Size(Large, bytes, 0);
            Size(Middle, bytes, 1);
            Size(Small, bytes, 2);
        }

        private static (int Width, int Height) Size(ReadOnlySpan<byte> bytes, int which)
        {
            var at = bytes[(Sizes + (2 * sizeof(int) * which))..];
            return (BinaryPrimitives.ReadInt32LittleEndian(at), BinaryPrimitives.ReadInt32LittleEndian(at[sizeof(int)..]));
        }

        private static void Size((int Width, int Height) size, Span<byte> bytes, int which)
        {
            var at = bytes[(Sizes + (2 * sizeof(int) * which))..];
            BinaryPrimitives.WriteInt32LittleEndian(at, size.Width);
            BinaryPrimitives.WriteInt32LittleEndian(at[sizeof(int)..], size.Height);
        }
    }
}
