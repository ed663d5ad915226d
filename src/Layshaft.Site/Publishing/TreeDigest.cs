using System.IO.Enumeration;

namespace Layshaft.Site.Publishing;

/// <summary>
/// One number over the names, sizes and times of everything below a folder: two looks that give the same number saw the same
/// files. Nothing is opened, nothing is kept, and the order in which the disk lists its entries does not matter.
/// </summary>
internal sealed class TreeDigest
{
    /// <summary>Stands for a folder, which has no size of its own.</summary>
    internal const long SizeOfFolder = -1;

    private readonly string _root;
    private readonly string? _without;
    private readonly bool _hidden;
    private readonly long _freshFrom;
    private readonly SeenFiles? _seen;
    private readonly Lock _gate = new();
    private readonly List<string> _fresh = [];
    private QuickHash _sum;

    private TreeDigest(string root, string? without, bool hidden, long freshFrom, SeenFiles? seen) =>
        (_root, _without, _hidden, _freshFrom, _seen) = (root, without, hidden, freshFrom, seen);

    /// <summary>The number.</summary>
    public QuickHash Value => _sum;

    /// <summary>
    /// Files whose time lies so close to the look that a change just after it may not show in it; full paths in ordinal order.
    /// </summary>
    public IReadOnlyList<string> Fresh => _fresh;

    /// <summary>Looks at a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="without">A folder below it to leave out, or null.</param>
    /// <param name="hidden">Whether names that begin with a point count.</param>
    /// <param name="freshFrom">From this time on (UTC ticks) a file is fresh.</param>
    /// <param name="seen">Receives the files; null where nobody will ask for them.</param>
    public static TreeDigest Of(string root, string? without, bool hidden, long freshFrom, SeenFiles? seen = null)
    {
        var digest = new TreeDigest(Path.TrimEndingDirectorySeparator(Path.GetFullPath(root)), without, hidden, freshFrom, seen);
        if (Directory.Exists(digest._root))
        {
            // The two upper floors one by one, what lies below them side by side.
            string[] inner = [.. digest.Add(digest._root, deep: false).SelectMany(f => digest.Add(f, deep: false))];
            Parallel.ForEach(inner, folder => digest.Add(folder, deep: true));
            digest._fresh.Sort(StringComparer.Ordinal);
        }

        return digest;
    }

    // Adds the entries of a folder and gives the folders in it.
    private List<string> Add(string folder, bool deep)
    {
        var (sum, fresh, folders) = (default(QuickHash), new List<string>(), new List<string>());
        var seen = _seen is null ? null : new SeenFiles();
        var options = new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = deep, IgnoreInaccessible = false };

        // Of objects, though there are none to give: the walk over those comes compiled with the framework.
        var entries = new FileSystemEnumerable<object?>(
            folder,
            (ref FileSystemEntry entry) =>
            {
                if (entry.IsDirectory && !deep && !IsLink(ref entry))
                {
                    folders.Add(entry.ToFullPath());
                }
                else if (!entry.IsDirectory && entry.LastWriteTimeUtc.UtcTicks >= _freshFrom)
                {
                    fresh.Add(entry.ToFullPath());
                }

                sum += Number(ref entry, seen);
                return null;
            },
            options)
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => Counts(ref entry),
            ShouldRecursePredicate = (ref FileSystemEntry entry) => Counts(ref entry) && !IsLink(ref entry),
        };
        using (var walk = entries.GetEnumerator())
        {
            while (walk.MoveNext())
            {
            }
        }

        lock (_gate)
        {
            _sum += sum;
            _fresh.AddRange(fresh);
            if (seen is not null)
            {
                _seen!.Add(seen);
            }
        }

        return folders;
    }

    private bool Counts(ref FileSystemEntry entry) =>
        (_hidden || !entry.FileName.StartsWith("."))
        && (_without is null || !entry.IsDirectory || !entry.FileName.SequenceEqual(Path.GetFileName(_without.AsSpan())) || entry.ToFullPath() != _without);

    private static bool IsLink(ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) != 0;

    // What a link points to is no part of it: its own size and time tell when it is set anew. To ask each file whether it is a
    // link would cost a call to the system more.
    private QuickHash Number(ref FileSystemEntry entry, SeenFiles? seen)
    {
        var folder = entry.Directory[_root.Length..];
        var (size, time) = entry.IsDirectory ? (IsLink(ref entry) ? -2 : SizeOfFolder, 0) : (entry.Length, entry.LastWriteTimeUtc.UtcTicks);
        Span<char> text = stackalloc char[512];
        var length = folder.Length + entry.FileName.Length + 1;
        text = length <= text.Length ? text[..length] : new char[length];
        folder.CopyTo(text);
        text[folder.Length] = '/';
        entry.FileName.CopyTo(text[(folder.Length + 1)..]);
        var number = QuickHash.Of(text, size, time);
        if (seen is not null)
        {
            Note(ref entry, text[1..], size, time, seen);
        }

        return number;
    }

    private static void Note(ref FileSystemEntry entry, scoped Span<char> path, long size, long time, SeenFiles seen)
    {
        if (Path.DirectorySeparatorChar != '/')
        {
            path.Replace(Path.DirectorySeparatorChar, '/');
        }

        if (IsLink(ref entry))
        {
            seen.AddLink();
        }
        else if (entry.IsDirectory)
        {
            seen.AddFolder(path);
        }
        else
        {
            seen.Add(path, size, time);
        }
    }
}
