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
/// <param name="Modified">A file's time, or a folder's from before what is in it was looked at, in ticks.</param>
internal sealed record TreeEntry(string Path, TreeKind Kind, long Size, long Modified);

/// <summary>Says of a file found in a tree whether it is to be held; for many threads at once.</summary>
internal delegate bool FileChoice(ReadOnlySpan<char> path, long size, long modified);

/// <summary>Everything below a folder, in order of path. Links are seen and not followed.</summary>
internal sealed class SiteTree
{
    private const int LongestPathOnStack = 512;

    private readonly PathIndex<TreeEntry> _entries;

    // Of the folder itself, from before what is in it was looked at.
    private readonly long _rootModified;

    private SiteTree(IEnumerable<TreeEntry> entries, long rootModified) => (_entries, _rootModified) = (new(entries, e => e.Path), rootModified);

    internal IReadOnlyCollection<TreeEntry> Entries => _entries;

    /// <summary>Its folders, that itself too (an empty path), in order of path.</summary>
    internal IEnumerable<TreeEntry> Folders => _entries.Where(e => e.Kind == TreeKind.Folder).Prepend(new(string.Empty, TreeKind.Folder, 0, _rootModified));

    internal TreeEntry? Find(string path) => _entries.Find(path);

    /// <summary>Walks a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="choice">Which files to hold; null for all. Folders and links always are.</param>
    internal static SiteTree Walk(string root, FileChoice? choice = null)
    {
        if (!Directory.Exists(root))
        {
            return new([], FolderTimes.None);
        }

        // The two upper floors one by one, what lies below them side by side.
        root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        var rootModified = FolderTimes.At(root);
        var upper = Found(root, root, choice, deep: false);
        upper.AddRange(upper.Where(e => e.Kind == TreeKind.Folder).ToList().SelectMany(e => Found(root, StateFolder.Place(root, e.Path), choice, deep: false)));
        string[] inner = [.. upper.Where(e => e.Kind == TreeKind.Folder && e.Path.Contains('/', StringComparison.Ordinal)).Select(e => e.Path)];
        var blocks = new List<TreeEntry>[inner.Length];
        SideBySide.ForEach(Enumerable.Range(0, inner.Length), Environment.ProcessorCount, i =>
        {
            blocks[i] = Found(root, StateFolder.Place(root, inner[i]), choice, deep: true);
            blocks[i].Sort((one, other) => string.CompareOrdinal(one.Path, other.Path));
        }, share: 4);
        return new(InOrder(upper, inner, blocks), rootModified);
    }

    /// <summary>Looks at some of a tree only: at some places, and at all that lies directly in some folders or in any folder there that is not known.</summary>
    /// <param name="root">The tree's folder.</param>
    /// <param name="places">Paths, at which there may be nothing; a folder there is passed over.</param>
    /// <param name="folders">Paths of folders, which may be gone.</param>
    /// <param name="known">The folders that are known.</param>
    /// <param name="choice">Which files to hold; null for all.</param>
    internal static SiteTree LookAt(string root, IEnumerable<string> places, IEnumerable<string> folders, IReadOnlySet<string> known, FileChoice? choice = null)
    {
        root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        var (found, rootModified) = (new Dictionary<string, TreeEntry>(StringComparer.Ordinal), FolderTimes.At(root));
        foreach (var folder in folders.Select(f => StateFolder.Place(root, f)).Where(f => FolderTimes.At(f) != FolderTimes.None))
        {
            foreach (var entry in Found(root, folder, choice, deep: false).Where(e => e.Path != StateFolder.MarkName))
            {
                var inner = entry.Kind == TreeKind.Folder && !known.Contains(entry.Path) ? Found(root, StateFolder.Place(root, entry.Path), choice, deep: true) : [];
                foreach (var one in inner.Prepend(entry))
                {
                    found[one.Path] = one;
                }
            }
        }

        // A folder at a file's place has changed the time of the one that it is in.
        foreach (var entry in places.Where(p => !found.ContainsKey(p)).Select(p => EntryAt(root, p)).OfType<TreeEntry>().Where(e => e.Kind != TreeKind.Folder))
        {
            if (entry.Kind == TreeKind.Link || choice?.Invoke(entry.Path, entry.Size, entry.Modified) != false)
            {
                found[entry.Path] = entry;
            }
        }

        return new(found.Values.OrderBy(e => e.Path, StringComparer.Ordinal), rootModified);
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
        var parts = upper.Where(e => e.Path != StateFolder.MarkName).Select(e => (Key: e.Path, Entries: new List<TreeEntry> { e }))
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
