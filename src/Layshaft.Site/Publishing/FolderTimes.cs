namespace Layshaft.Site.Publishing;

/// <summary>
/// The times of folders. A disk sets a folder's when a name comes into it or leaves it, not when a file in it is written to: in a folder of
/// the same time lie the same names as before.
/// </summary>
internal static class FolderTimes
{
    /// <summary>Stands for a folder that is not there.</summary>
    internal const long None = -1;

    /// <summary>The time of a folder in ticks; <see cref="None"/> where there is none, or a link.</summary>
    /// <param name="place">The folder.</param>
    internal static long At(string place)
    {
        var folder = new DirectoryInfo(place);
        return folder.Exists && (folder.Attributes & FileAttributes.ReparsePoint) == 0 ? folder.LastWriteTimeUtc.Ticks : None;
    }

    /// <summary>The times of some folders of a tree.</summary>
    /// <param name="root">The tree's folder.</param>
    /// <param name="folders">Their paths; an empty one for the tree's folder.</param>
    /// <param name="parallelism">The most threads at once.</param>
    internal static long[] Of(string root, IReadOnlyList<string> folders, int parallelism)
    {
        var times = new long[folders.Count];
        SideBySide.ForEach(Enumerable.Range(0, times.Length), parallelism, i => times[i] = At(StateFolder.Place(root, folders[i])));
        return times;
    }

    /// <summary>One number over the folders that are there and their times, in whatever order they are given.</summary>
    /// <param name="folders">Their paths.</param>
    /// <param name="times">Their times.</param>
    internal static LookNumber NumberOf(IReadOnlyList<string> folders, long[] times)
    {
        var sum = default(LookNumber);
        for (var i = 0; i < times.Length; i++)
        {
            sum += times[i] == None ? default : LookNumber.Of(folders[i], TreeDigest.SizeOfFolder, times[i]);
        }

        return sum;
    }
}
