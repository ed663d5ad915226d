using System.Collections;

namespace Layshaft.Site.Publishing;

/// <summary>Something with a path in the site.</summary>
internal interface IPathed
{
    /// <summary>From the output folder, with forward slashes.</summary>
    string Path { get; }
}

/// <summary>Things with a path, in ordinal order of path and by path, and the folders that they are in. Immutable.</summary>
/// <typeparam name="T">What they are.</typeparam>
internal sealed class PathIndex<T> : IReadOnlyList<T>
    where T : class, IPathed
{
    private readonly T[] _ordered;
    private readonly Lazy<Dictionary<string, int>> _places;
    private readonly Lazy<HashSet<string>> _folders;

    /// <summary>An index.</summary>
    /// <param name="items">The things, in any order.</param>
    internal PathIndex(IEnumerable<T> items)
    {
        _ordered = [.. items];
        if (!IsOrdered())
        {
            Array.Sort(_ordered, (one, other) => string.CompareOrdinal(one.Path, other.Path));
        }

        _places = new(Places);
        _folders = new(() => [.. NewFolders()]);
    }

    public int Count => _ordered.Length;

    public T this[int index] => _ordered[index];

    /// <summary>Whether two have the same path; it then finds the first of them.</summary>
    internal bool HasTwins => _places.Value.Count < _ordered.Length;

    /// <summary>The folders that the things are in; each once, those above before those below.</summary>
    internal IReadOnlyCollection<string> Folders => _folders.Value;

    /// <summary>The thing at a path, or null.</summary>
    internal T? Find(string path) => _places.Value.TryGetValue(path, out var index) ? _ordered[index] : null;

    /// <summary>The place of a path in the order; negative when nothing has it.</summary>
    internal int IndexOf(ReadOnlySpan<char> path) =>
        _places.Value.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(path, out var index) ? index : -1;

    /// <summary>Whether any thing is in a folder.</summary>
    internal bool HasFolder(string folder) => _folders.Value.Contains(folder);

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_ordered).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private bool IsOrdered()
    {
        for (var i = 1; i < _ordered.Length; i++)
        {
            if (string.CompareOrdinal(_ordered[i - 1].Path, _ordered[i].Path) > 0)
            {
                return false;
            }
        }

        return true;
    }

    private Dictionary<string, int> Places()
    {
        var places = new Dictionary<string, int>(_ordered.Length, StringComparer.Ordinal);
        for (var i = 0; i < _ordered.Length; i++)
        {
            places.TryAdd(_ordered[i].Path, i);
        }

        return places;
    }

    private IEnumerable<string> NewFolders()
    {
        var before = string.Empty;
        foreach (var item in _ordered)
        {
            // All paths in a folder are next to each other, so what the path before has was given already.
            var path = item.Path;
            for (var i = path.AsSpan().CommonPrefixLength(before); i < path.Length; i++)
            {
                if (path[i] == '/')
                {
                    yield return path[..i];
                }
            }

            before = path;
        }
    }
}
