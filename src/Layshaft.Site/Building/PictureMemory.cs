using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>
/// What is known of pictures from the publish before: a picture of the same size and time need not be opened again. Losing
/// it costs time and nothing else. For many threads at once.
/// </summary>
public sealed class PictureMemory
{
    private const string Mark = "layshaft pictures 2";

    private readonly string _path;
    private readonly long _began = DateTime.UtcNow.Ticks;
    private readonly Dictionary<string, (long Length, long Modified, UsablePicture Picture)> _known = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (long Length, long Modified, UsablePicture Picture)> _seen = new(StringComparer.Ordinal);

    private PictureMemory(string path) => _path = path;

    /// <summary>The memory that is kept beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static PictureMemory Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var memory = new PictureMemory(new StateFolder(OutputFolder.RealPath(output)).Pictures);
        try
        {
            memory.Read();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException)
        {
            memory._known.Clear();
        }

        return memory;
    }

    /// <summary>What is known of a picture; null when it has to be opened.</summary>
    internal UsablePicture? Recall(BookFile file)
    {
        if (!_known.TryGetValue(file.Path, out var known) || known.Length != file.Length || known.Modified != file.Modified)
        {
            return null;
        }

        lock (_seen)
        {
            _seen[file.Path] = known;
        }

        return known.Picture;
    }

    /// <summary>Notes a picture in which nothing was wrong.</summary>
    internal void Note(BookFile file, UsablePicture picture)
    {
        // A change within one tick of the disk's clock would not show in the time of so young a file.
        if (file.Modified > 0 && file.Modified < _began - DiskClock.Coarsest.Ticks)
        {
            lock (_seen)
            {
                _seen[file.Path] = (file.Length, file.Modified, picture);
            }
        }
    }

    /// <summary>Keeps what was seen for the next publish; those of other books and pictures that are gone are forgotten.</summary>
    public void Save()
    {
        try
        {
            if (_seen.Count != _known.Count || _seen.Any(s => !_known.TryGetValue(s.Key, out var known) || known != s.Value))
            {
                new DiskWork().Replace(_path, ToBytes());
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The next publish opens the pictures again.
        }
    }

    private void Read()
    {
        using var reader = new BinaryReader(new MemoryStream(File.ReadAllBytes(_path)), Encoding.UTF8);
        if (reader.ReadString() != Mark)
        {
            return;
        }

        for (var left = reader.ReadInt32(); left > 0; left--)
        {
            var path = reader.ReadString();
            var (length, modified, hash) = (reader.ReadInt64(), reader.ReadInt64(), Convert.ToHexStringLower(reader.ReadBytes(32)));
            var (large, middle, small) = (Size(), Size(), Size());
            _known[path] = (length, modified, new UsablePicture(path, large, small) { Middle = middle, Hash = hash });
        }

        (int Width, int Height) Size() => (reader.ReadInt32(), reader.ReadInt32());
    }

    private byte[] ToBytes()
    {
        var stream = new MemoryStream();
        using var writer = new BinaryWriter(stream, Encoding.UTF8);
        writer.Write(Mark);
        writer.Write(_seen.Count);
        foreach (var (path, (length, modified, picture)) in _seen.OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            writer.Write(path);
            writer.Write(length);
            writer.Write(modified);
            writer.Write(Convert.FromHexString(picture.Hash));
            foreach (var (width, height) in new[] { picture.Large, picture.Middle, picture.Small })
            {
                writer.Write(width);
                writer.Write(height);
            }
        }

        writer.Flush();
        return stream.ToArray();
    }
}
