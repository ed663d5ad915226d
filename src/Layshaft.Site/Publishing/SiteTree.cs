using System.IO.Enumeration;

namespace Layshaft.Site.Publishing;

/// <summary>What is at a path.</summary>
internal enum TreeKind
{
    File,
    Folder,
    Link,
}

/// <summary>Something found in a tree.</summary>
/// <param name="Path">Its path in the tree.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Size">A file's length in bytes.</param>
/// <param name="Modified">When a file or folder was last changed, in ticks; 0 for a link.</param>
internal sealed record TreeEntry(string Path, TreeKind Kind, long Size, long Modified) : IPathed;

/// <summary>Says of a file found in a tree whether it is to be kept; for many threads at once.</summary>
internal delegate bool FileChoice(ReadOnlySpan<char> path, long size, long modified);

/// <summary>Finds everything below a folder.</summary>
internal static class SiteTree
{
    /// <summary>Walks a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="choice">Which files to keep; null for all. Folders and links always are.</param>
    internal static PathIndex<TreeEntry> Walk(string root, FileChoice? choice = null)
    {
        var found = FolderWalk.Run(root, () => new List<TreeEntry>(), (List<TreeEntry> entries, ref FileSystemEntry entry, scoped ReadOnlySpan<char> path) =>
        {
            var kind = FolderWalk.IsLink(ref entry) ? TreeKind.Link : entry.IsDirectory ? TreeKind.Folder : TreeKind.File;
            var size = kind == TreeKind.File ? entry.Length : 0;
            var modified = kind == TreeKind.Link ? 0 : entry.LastWriteTimeUtc.UtcTicks;
            if (kind != TreeKind.File || choice?.Invoke(path, size, modified) != false)
            {
                entries.Add(new(new string(path), kind, size, modified));
            }
        });
        return new(found.SelectMany(f => f));
    }

    /// <summary>What is at one place in a tree, or null.</summary>
    /// <param name="root">The tree's folder.</param>
    /// <param name="path">The path.</param>
    internal static TreeEntry? EntryAt(string root, string path)
    {
        var file = new FileInfo(StateFolder.Place(root, path));
        return (int)file.Attributes == -1 ? null
            : (file.Attributes & FileAttributes.ReparsePoint) != 0 ? new(path, TreeKind.Link, 0, 0)
            : (file.Attributes & FileAttributes.Directory) != 0 ? new(path, TreeKind.Folder, 0, file.LastWriteTimeUtc.Ticks)
            : new(path, TreeKind.File, file.Length, file.LastWriteTimeUtc.Ticks);
    }
}
