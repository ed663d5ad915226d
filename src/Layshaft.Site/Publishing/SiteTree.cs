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

        var options = new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = true, IgnoreInaccessible = false };
        var found = new FileSystemEnumerable<TreeEntry>(root, (ref FileSystemEntry e) => Entry(ref e), options)
        {
            ShouldRecursePredicate = (ref FileSystemEntry e) => (e.Attributes & FileAttributes.ReparsePoint) == 0,
        };
        return new(found.Where(e => e.Path != StateFolder.MarkName));
    }

    private static TreeEntry Entry(ref FileSystemEntry entry)
    {
        var full = entry.ToFullPath();
        var path = full[(entry.RootDirectory.Length + (Path.EndsInDirectorySeparator(entry.RootDirectory) ? 0 : 1))..];
        path = path.Replace(Path.DirectorySeparatorChar, '/');
        if ((entry.Attributes & FileAttributes.ReparsePoint) != 0)
        {
            return new(path, TreeKind.Link, 0, 0);
        }

        return entry.IsDirectory
            ? new(path, TreeKind.Folder, 0, 0)
            : new(path, TreeKind.File, entry.Length, entry.LastWriteTimeUtc.UtcTicks);
    }
}
