using System.IO.Enumeration;

namespace Layshaft.Site.Publishing;

/// <summary>What stands at a path.</summary>
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
internal sealed record TreeEntry(string Path, TreeKind Kind, long Size, long Modified);

/// <summary>Says of a file found in a tree whether it is to be held; for many threads at once.</summary>
internal delegate bool FileChoice(ReadOnlySpan<char> path, long size, long modified);

/// <summary>Everything below a folder, in order of path. Links are seen and not followed.</summary>
internal sealed class SiteTree
{
    private const int LongestPathOnStack = 512;

    private readonly PathIndex<TreeEntry> _entries;

    private SiteTree(IEnumerable<TreeEntry> entries) => _entries = new(entries, e => e.Path);

    internal IReadOnlyCollection<TreeEntry> Entries => _entries;

    internal TreeEntry? Find(string path) => _entries.Find(path);

    /// <summary>Walks a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="choice">Which files to hold; null for all. Folders and links always are.</param>
    internal static SiteTree Walk(string root, FileChoice? choice = null)
    {
        if (!Directory.Exists(root))
        {
            return new([]);
        }

        // The two upper floors one by one, what lies below them side by side.
        root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        var upper = Found(root, root, choice, deep: false);
        upper.AddRange(upper.Where(e => e.Kind == TreeKind.Folder).ToList().SelectMany(e => Found(root, StateFolder.Place(root, e.Path), choice, deep: false)));
        string[] inner = [.. upper.Where(e => e.Kind == TreeKind.Folder && e.Path.Contains('/', StringComparison.Ordinal)).Select(e => e.Path)];
        var blocks = new List<TreeEntry>[inner.Length];
        InParallel.ForEach(Enumerable.Range(0, inner.Length), Environment.ProcessorCount, i =>
        {
            blocks[i] = Found(root, StateFolder.Place(root, inner[i]), choice, deep: true);
            blocks[i].Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        }, share: 4);
        return new(InOrder(upper, inner, blocks));
    }

    /// <summary>What stands at one place in a tree, or null.</summary>
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

    // All paths in a folder begin with its path and a slash, so they stand together, where that alone would stand.
    private static IEnumerable<TreeEntry> InOrder(List<TreeEntry> upper, string[] inner, List<TreeEntry>[] blocks)
    {
        var parts = upper.Select(e => (Key: e.Path, Entries: new List<TreeEntry> { e }))
            .Concat(inner.Zip(blocks, (path, block) => (Key: path + "/", Entries: block)));
        return parts.OrderBy(p => p.Key, StringComparer.Ordinal).SelectMany(p => p.Entries);
    }

    private static List<TreeEntry> Found(string root, string folder, FileChoice? choice, bool deep)
    {
        var options = new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = deep, IgnoreInaccessible = false };
        var names = new FolderNames(root.Length);
        var found = new FileSystemEnumerable<TreeEntry?>(folder, (ref FileSystemEntry e) => Entry(ref e, names, choice), options)
        {
            ShouldRecursePredicate = (ref FileSystemEntry e) => (e.Attributes & FileAttributes.ReparsePoint) == 0,
        };
        return [.. found.OfType<TreeEntry>()];
    }

    private static TreeEntry? Entry(ref FileSystemEntry entry, FolderNames names, FileChoice? choice)
    {
        var folder = names.Of(entry.Directory);
        var length = folder.Length + entry.FileName.Length;
        Span<char> path = length <= LongestPathOnStack ? stackalloc char[length] : new char[length];
        folder.CopyTo(path);
        entry.FileName.CopyTo(path[folder.Length..]);
        var kind = (entry.Attributes & FileAttributes.ReparsePoint) != 0 ? TreeKind.Link : entry.IsDirectory ? TreeKind.Folder : TreeKind.File;
        var size = kind == TreeKind.File ? entry.Length : 0;
        var modified = kind == TreeKind.Link ? 0 : entry.LastWriteTimeUtc.UtcTicks;
        return kind == TreeKind.File && choice?.Invoke(path, size, modified) == false ? null : new(new string(path), kind, size, modified);
    }

    // The path of a folder in the site, with a slash at its end. Neighbours lie in one folder, so the last one is kept.
    private sealed class FolderNames(int rootLength)
    {
        private string _full = string.Empty;
        private string _path = string.Empty;

        internal ReadOnlySpan<char> Of(ReadOnlySpan<char> full)
        {
            if (!full.SequenceEqual(_full))
            {
                _full = new(full);
                _path = full.Length <= rootLength + 1 ? string.Empty : $"{full[(rootLength + 1)..]}/".Replace(Path.DirectorySeparatorChar, '/');
            }

            return _path;
        }
    }
}
