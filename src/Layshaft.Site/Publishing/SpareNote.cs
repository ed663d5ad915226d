using System.Text;

namespace Layshaft.Site.Publishing;

/// <summary>
/// How the tree that was left as a spare was left: while its folders have the times that are noted, it holds every file that the site
/// kept, and nothing else. Written when all is settled and removed before the spare is touched; without it the spare is walked.
/// </summary>
/// <param name="List">The hash of the site's list of files.</param>
/// <param name="Folders">The number of its folders and their times, see <see cref="FolderTimes.NumberOf"/>.</param>
/// <param name="More">Its folders that hold none of the site's files.</param>
/// <param name="Young">Its folders so young that a name that came just after would not show in their times.</param>
internal sealed record SpareNote(ContentHash List, LookNumber Folders, IReadOnlyList<string> More, IReadOnlyList<string> Young)
{
    private const string Mark = "layshaft spare note 1";

    // With more it is no quicker than a walk.
    private const int MostYoung = 1000;

    /// <summary>The note of a spare as it is now.</summary>
    /// <param name="root">The spare.</param>
    /// <param name="folders">All its folders, that itself too, with their times where nobody is known to have touched them since they were looked at.</param>
    /// <param name="list">The hash of the site's list of files.</param>
    /// <param name="ofSite">Those folders in which the site has files.</param>
    /// <param name="clock">The step in which the disk keeps the times of folders.</param>
    /// <param name="parallelism">The most threads at once.</param>
    /// <returns>Null where it would be of no use.</returns>
    internal static SpareNote? Of(string root, IReadOnlyList<(string Path, long? Modified)> folders, ContentHash list, IReadOnlySet<string> ofSite, TimeSpan clock, int parallelism)
    {
        // A name that comes into a folder after its time was taken gives it another than is noted.
        var freshFrom = DiskClock.FreshFrom(DateTime.UtcNow.Ticks, clock);
        string[] paths = [.. folders.Select(f => f.Path)];
        long[] times = [.. folders.Select(f => f.Modified ?? FolderTimes.None)];
        SideBySide.ForEach(Enumerable.Range(0, times.Length).Where(i => folders[i].Modified is null), parallelism, i => times[i] = FolderTimes.At(StateFolder.Place(root, paths[i])));
        string[] young = [.. paths.Where((_, i) => times[i] >= freshFrom)];
        return young.Length <= MostYoung
            ? new(list, FolderTimes.NumberOf(paths, times), [.. paths.Where((f, i) => times[i] != FolderTimes.None && !ofSite.Contains(f))], young)
            : null;
    }

    /// <summary>The note of the spare of a site; null where there is none, or one of another site.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="list">The hash of the site's list of files.</param>
    internal static SpareNote? Read(string path, ContentHash list)
    {
        try
        {
            using var reader = new BinaryReader(HashedFile.OpenWhole(path, out _), Encoding.UTF8);
            return reader.ReadString() == Mark && ContentHash.Read(reader.BaseStream) == list
                ? new(list, new(reader.ReadUInt64(), reader.ReadUInt64()), TextList.Read(reader), TextList.Read(reader))
                : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            return null;
        }
    }

    /// <summary>Writes it.</summary>
    /// <param name="files">Writes it.</param>
    /// <param name="path">Where to.</param>
    internal void Write(IFileWork files, string path) => HashedFile.Write(files, path, stream =>
    {
        using var writer = new BinaryWriter(stream, Encoding.UTF8, leaveOpen: true);
        writer.Write(Mark);
        List.WriteTo(writer);
        writer.Write(Folders.High);
        writer.Write(Folders.Low);
        TextList.Write(writer, More);
        TextList.Write(writer, Young);
    });
}
