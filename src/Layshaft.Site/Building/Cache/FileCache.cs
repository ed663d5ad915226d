using System.Collections.Concurrent;
using Layshaft.Book.Reading;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>
/// What is known of the book's files from the publish before: one of the same size and time need not be opened again. Losing
/// it costs time and nothing else. For many threads at once.
/// </summary>
public sealed class FileCache
{
    private readonly long _began = DateTime.UtcNow.Ticks;
    private readonly Dictionary<string, KnownFile> _before = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, KnownFile> _now = new(StringComparer.Ordinal);

    /// <summary>What is known of an image; null when it has to be opened.</summary>
    internal UsablePicture? Recall(BookFile file) => Find(file) is { Image: { } image } known
        ? new(file.Path, image.Large, image.Small) { Middle = image.Middle, Hash = known.Hash.ToString() }
        : null;

    /// <summary>The hash of a file's content; null when it has to be opened.</summary>
    internal ContentHash? HashOf(BookFile file) => Find(file) is { } known && known.Hash != default ? known.Hash : null;

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

    /// <summary>The paths below a folder of which something is known, and no file was asked for that is so; in order.</summary>
    /// <param name="folder">The folder.</param>
    internal IEnumerable<string> Unseen(string folder) =>
        _before.Keys.Where(p => p.StartsWith($"{folder}/", StringComparison.Ordinal) && !_now.ContainsKey(p)).Order(StringComparer.Ordinal);

    /// <summary>Notes an image in which nothing was wrong.</summary>
    internal void Note(BookFile file, UsablePicture picture)
    {
        if (ContentHash.Parse(picture.Hash) is { } hash)
        {
            Note(file, new KnownFile(file.Length, file.Modified, hash, new(picture.Large, picture.Middle, picture.Small)));
        }
    }

    /// <summary>Notes the hash of a text's content.</summary>
    internal void Note(BookFile file, ContentHash hash) => Note(file, new KnownFile(file.Length, file.Modified, hash, null));

    /// <summary>Reads what was kept.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="FormatException">It is something else.</exception>
    /// <exception cref="IOException">There is less than it says.</exception>
    internal static FileCache Read(BinaryReader reader)
    {
        // Other image code may give other sizes.
        var (cache, isOurs) = (new FileCache(), reader.ReadString() == PictureFingerprint.Value);
        (int, int) ReadSize() => (reader.ReadInt32(), reader.ReadInt32());
        foreach (var (path, known) in reader.ReadAll(() => (reader.ReadString(), new KnownFile(
            reader.ReadInt64(), reader.ReadInt64(), reader.ReadHash(), reader.ReadBoolean() ? new(ReadSize(), ReadSize(), ReadSize()) : null))))
        {
            cache._before[path] = known;
        }

        return isOurs ? cache : new();
    }

    /// <summary>Writes what was seen, for the next publish; files of other books and those that are gone are forgotten.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        writer.Write(PictureFingerprint.Value);
        writer.WriteAll(_now.ToArray(), file =>
        {
            writer.Write(file.Key);
            writer.Write(file.Value.Length);
            writer.Write(file.Value.Modified);
            writer.Write(file.Value.Hash);
            writer.Write(file.Value.Image is not null);
            if (file.Value.Image is { } image)
            {
                foreach (var (width, height) in new[] { image.Large, image.Middle, image.Small })
                {
                    writer.Write(width);
                    writer.Write(height);
                }
            }
        });
    }

    private void Note(BookFile file, KnownFile known)
    {
        // A change within one tick of the disk's clock would not show in the time of so young a file.
        if (file.Modified > 0 && file.Modified < DiskClock.FreshFrom(_began))
        {
            _now[file.Path] = known;
        }
    }

    private KnownFile? Find(BookFile file)
    {
        if (_now.TryGetValue(file.Path, out var known) && known.IsOf(file))
        {
            return known;
        }

        return _before.TryGetValue(file.Path, out known) && known.IsOf(file) ? _now[file.Path] = known : null;
    }

    // With the hash of its content where it was opened, and its sizes in the site if it is an image.
    private sealed record KnownFile(long Length, long Modified, ContentHash Hash, ImageSizes? Image)
    {
        internal bool IsOf(BookFile file) => Length == file.Length && Modified == file.Modified;
    }

    private sealed record ImageSizes((int Width, int Height) Large, (int Width, int Height) Middle, (int Width, int Height) Small);
}
