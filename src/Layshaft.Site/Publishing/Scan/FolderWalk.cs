using System.IO.Enumeration;

namespace Layshaft.Site.Publishing;

/// <summary>Takes an entry that a walk finds.</summary>
/// <param name="visitor">Who takes it.</param>
/// <param name="entry">A file, folder or link.</param>
/// <param name="path">Its path from the walk's root, with forward slashes.</param>
internal delegate void FolderVisit<in T>(T visitor, ref FileSystemEntry entry, scoped ReadOnlySpan<char> path);

/// <summary>Walks everything below a folder on several threads. Links are seen and not followed.</summary>
internal static class FolderWalk
{
    private const int LongestOnStack = 512;

    /// <summary>Whether an entry is a link.</summary>
    internal static bool IsLink(ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) != 0;

    /// <summary>Walks a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="visitor">Makes a visitor, which is used by one thread at a time.</param>
    /// <param name="visit">Told of each entry.</param>
    /// <param name="counts">Which entries count; what is below a folder that does not is left out.</param>
    /// <returns>The visitors.</returns>
    internal static IReadOnlyList<T> Run<T>(string root, Func<T> visitor, FolderVisit<T> visit, FileSystemEnumerable<object?>.FindPredicate? counts = null)
        where T : class
    {
        if (!Directory.Exists(root))
        {
            return [];
        }

        // The two upper levels one by one, what is below them side by side.
        root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(root));
        var (first, inner) = (visitor(), new List<string>());
        foreach (var folder in Visit(root, root, first, visit, counts, deep: false))
        {
            inner.AddRange(Visit(root, folder, first, visit, counts, deep: false));
        }

        var others = new T[inner.Count];
        Workers.ForEachInShares(Enumerable.Range(0, others.Length), Environment.ProcessorCount, i => Visit(root, inner[i], others[i] = visitor(), visit, counts, deep: true), share: 4);
        return [first, .. others];
    }

    // Gives the folders in a folder, unless the walk goes into them.
    private static List<string> Visit<T>(string root, string folder, T visitor, FolderVisit<T> visit, FileSystemEnumerable<object?>.FindPredicate? counts, bool deep)
        where T : class
    {
        var folders = new List<string>();
        var options = new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = deep, IgnoreInaccessible = false };

        // Of objects, though there are none to give: the walk over those comes precompiled with the framework.
        var entries = new FileSystemEnumerable<object?>(
            folder,
            (ref FileSystemEntry entry) =>
            {
                if (!deep && entry.IsDirectory && !IsLink(ref entry))
                {
                    folders.Add(entry.ToFullPath());
                }

                var above = entry.Directory.Length > root.Length ? entry.Directory[(root.Length + 1)..] : [];
                var length = above.Length + entry.FileName.Length + (above.Length > 0 ? 1 : 0);
                Span<char> path = length <= LongestOnStack ? stackalloc char[length] : new char[length];
                above.CopyTo(path);
                if (above.Length > 0)
                {
                    path[above.Length] = '/';
                }

                entry.FileName.CopyTo(path[(length - entry.FileName.Length)..]);
                if (Path.DirectorySeparatorChar != '/')
                {
                    path.Replace(Path.DirectorySeparatorChar, '/');
                }

                visit(visitor, ref entry, path);
                return null;
            },
            options)
        {
            ShouldIncludePredicate = counts,
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !IsLink(ref entry) && (counts is null || counts(ref entry)),
        };
        using var walk = entries.GetEnumerator();
        while (walk.MoveNext())
        {
        }

        return folders;
    }
}

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
