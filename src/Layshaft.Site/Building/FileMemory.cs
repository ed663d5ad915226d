using System.Collections.Concurrent;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Building;

/// <summary>
/// What is known of the book's files from the publish before: one of the same size and time need not be opened again. Losing
/// it costs time and nothing else. For many threads at once.
/// </summary>
public sealed class FileMemory
{
    private const string Mark = "layshaft files 1";

    private readonly string _path;
    private readonly long _began = DateTime.UtcNow.Ticks;
    private readonly PathTable _paths;
    private readonly Row[] _known;
    private readonly bool[] _seen;
    private readonly ConcurrentDictionary<string, Row> _new = new(StringComparer.Ordinal);

    private FileMemory(string path, PathTable paths, Row[] known, ContentHash? whole) =>
        (_path, _paths, _known, _seen, Whole) = (path, paths, known, new bool[known.Length], whole);

    /// <summary>Stands for all that is known, as it was read and, once it is saved, as it is kept; null where nothing is.</summary>
    internal ContentHash? Whole { get; private set; }

    /// <summary>The memory that is kept beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static FileMemory Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var path = new StateFolder(OutputFolder.RealPath(output)).Files;
        try
        {
            return Read(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            return new(path, PathTable.None, [], null);
        }
    }

    /// <summary>What is known of a picture; null when it has to be opened.</summary>
    internal UsablePicture? Recall(BookFile file) => Find(file) is { IsPicture: true } row ? row.ToPicture(file.Path) : null;

    /// <summary>The hash of a file's content; null when it has to be opened.</summary>
    internal ContentHash? HashOf(BookFile file) => Find(file)?.Hash;

    /// <summary>Keeps what is known of a file, if anything is, for the next publish too.</summary>
    /// <returns>Whether anything is: then it is as it was when it was noted.</returns>
    internal bool Keep(BookFile file) => Find(file) is not null;

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

    /// <summary>Keeps what was seen for the next publish; files of other books and those that are gone are forgotten.</summary>
    public void Save()
    {
        try
        {
            if (!_new.IsEmpty || _seen.Contains(false))
            {
                Whole = HashedFile.Write(new DiskWork(), _path, Write);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next publish opens the files again.
            Whole = null;
        }
    }

    private static FileMemory Read(string file)
    {
        using var reader = new BinaryReader(HashedFile.OpenWhole(file, out var whole), Encoding.UTF8);
        if (reader.ReadString() != Mark)
        {
            throw new FormatException();
        }

        var known = new Row[reader.ReadInt32()];
        var paths = PathTable.Of(Paths(), out var order);
        return new(file, paths, [.. order.Select(i => known[i])], whole);

        IEnumerable<string> Paths()
        {
            for (var i = 0; i < known.Length; i++)
            {
                var path = reader.ReadString();
                known[i] = Row.Read(reader);
                yield return path;
            }
        }
    }

    private void Write(Stream stream)
    {
        // Not disposed: that would close the stream, which is the caller's.
        var buffer = new BufferedStream(stream, 1 << 16);
        using var writer = new BinaryWriter(buffer, Encoding.UTF8, leaveOpen: true);
        int[] kept = [.. Enumerable.Range(0, _known.Length).Where(i => _seen[i] && !_new.ContainsKey(_paths.TextOf(i)))];
        writer.Write(Mark);
        writer.Write(kept.Length + _new.Count);
        foreach (var (path, row) in kept.Select(i => (Path: _paths.TextOf(i), Row: _known[i])).Concat(_new.Select(n => (Path: n.Key, Row: n.Value))).OrderBy(p => p.Path, StringComparer.Ordinal))
        {
            writer.Write(path);
            row.Write(writer);
        }

        writer.Flush();
        buffer.Flush();
    }

    private readonly record struct Row(long Length, long Modified, ContentHash Hash, (int Width, int Height) Large, (int Width, int Height) Middle, (int Width, int Height) Small)
    {
        internal bool IsPicture => Large != default;

        internal static Row Read(BinaryReader reader)
        {
            var (length, modified) = (reader.ReadInt64(), reader.ReadInt64());
            return new(length, modified, ContentHash.Read(reader.BaseStream), Size(reader), Size(reader), Size(reader));
        }

        internal UsablePicture ToPicture(string path) => new(path, Large, Small) { Middle = Middle, Hash = Hash.ToString() };

        internal void Write(BinaryWriter writer)
        {
            writer.Write(Length);
            writer.Write(Modified);
            Hash.WriteTo(writer);
            foreach (var (width, height) in new[] { Large, Middle, Small })
            {
                writer.Write(width);
                writer.Write(height);
            }
        }

        private static (int Width, int Height) Size(BinaryReader reader) => (reader.ReadInt32(), reader.ReadInt32());
    }
}
