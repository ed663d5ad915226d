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
internal sealed record TreeEntry(string Path, TreeKind Kind, long Size, long Modified);

/// <summary>Everything below a folder, in order of path. Links are seen and not followed.</summary>
internal sealed class SiteTree
{
    private readonly PathIndex<TreeEntry> _entries;

    private SiteTree(IEnumerable<TreeEntry> entries) => _entries = new(entries, e => e.Path);

    internal IReadOnlyCollection<TreeEntry> Entries => _entries;

    internal TreeEntry? Find(string path) => _entries.Find(path);

    /// <summary>Walks a folder; one that does not exist is empty.</summary>
    internal static SiteTree Walk(string root)
    {
        if (!Directory.Exists(root))
        {
            return new([]);
        }

        // The two upper floors one by one, what lies below them side by side.
        root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        var upper = Found(root, root, deep: false);
        upper.AddRange(upper.Where(e => e.Kind == TreeKind.Folder).ToList().SelectMany(e => Found(root, StateFolder.Place(root, e.Path), deep: false)));
        string[] inner = [.. upper.Where(e => e.Kind == TreeKind.Folder && e.Path.Contains('/', StringComparison.Ordinal)).Select(e => e.Path)];
        var blocks = new List<TreeEntry>[inner.Length];
        SideBySide.ForEach(Enumerable.Range(0, inner.Length), Environment.ProcessorCount, i =>
        {
            blocks[i] = Found(root, StateFolder.Place(root, inner[i]), deep: true);
            blocks[i].Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        }, share: 4);
        return new(InOrder(upper, inner, blocks));
    }

    // All paths in a folder begin with its path and a slash, so they stand together, where that alone would stand.
    private static IEnumerable<TreeEntry> InOrder(List<TreeEntry> upper, string[] inner, List<TreeEntry>[] blocks)
    {
        var parts = upper.Where(e => e.Path != StateFolder.MarkName).Select(e => (Key: e.Path, Entries: new List<TreeEntry> { e }))
            .Concat(inner.Zip(blocks, (path, block) => (Key: path + "/", Entries: block)));
        return parts.OrderBy(p => p.Key, StringComparer.Ordinal).SelectMany(p => p.Entries);
    }

    private static List<TreeEntry> Found(string root, string folder, bool deep)
    {
        var options = new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = deep, IgnoreInaccessible = false };
        var names = new FolderNames(root.Length);
        var found = new FileSystemEnumerable<TreeEntry>(folder, (ref FileSystemEntry e) => Entry(ref e, names), options)
        {
            ShouldRecursePredicate = (ref FileSystemEntry e) => (e.Attributes & FileAttributes.ReparsePoint) == 0,
        };
        return [.. found];
    }

    private static TreeEntry Entry(ref FileSystemEntry entry, FolderNames names)
    {
        var path = string.Concat(names.Of(entry.Directory), entry.FileName);
        if ((entry.Attributes & FileAttributes.ReparsePoint) != 0)
        {
            return new(path, TreeKind.Link, 0, 0);
        }

        return entry.IsDirectory
            ? new(path, TreeKind.Folder, 0, 0)
            : new(path, TreeKind.File, entry.Length, entry.LastWriteTimeUtc.UtcTicks);
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
