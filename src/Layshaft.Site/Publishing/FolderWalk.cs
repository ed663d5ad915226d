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
