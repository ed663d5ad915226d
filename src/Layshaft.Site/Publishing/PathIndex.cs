using System.Collections;

namespace Layshaft.Site.Publishing;

/// <summary>Things with a path, in order of path and by path. Immutable.</summary>
/// <typeparam name="T">What they are.</typeparam>
internal sealed class PathIndex<T> : IReadOnlyCollection<T>
    where T : class
{
    private readonly T[] _ordered;
    private readonly Func<T, string> _pathOf;
    private readonly Lazy<Dictionary<string, T>> _byPath;

    /// <summary>An index.</summary>
    /// <param name="items">The things, in any order.</param>
    /// <param name="pathOf">The path of one.</param>
    /// <exception cref="ArgumentException">Two have the same path.</exception>
    internal PathIndex(IEnumerable<T> items, Func<T, string> pathOf)
    {
        _ordered = [.. items];
        _pathOf = pathOf;

        // Most come in order; and many are only gone through, and never asked for a path.
        if (FirstOutOfOrder() is not null)
        {
            Array.Sort(_ordered, (one, other) => string.CompareOrdinal(pathOf(one), pathOf(other)));
            if (FirstOutOfOrder() is { } twin)
            {
                throw new ArgumentException($"`{pathOf(twin)}` is there twice.", nameof(items));
            }
        }

        _byPath = new(ByPath);
    }

    public int Count => _ordered.Length;

    /// <summary>The thing at a path, or null.</summary>
    internal T? Find(string path) => _byPath.Value.GetValueOrDefault(path);

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_ordered).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private T? FirstOutOfOrder()
    {
        for (var i = 1; i < _ordered.Length; i++)
        {
            if (string.CompareOrdinal(_pathOf(_ordered[i - 1]), _pathOf(_ordered[i])) >= 0)
            {
                return _ordered[i];
            }
        }

        return null;
    }

    private Dictionary<string, T> ByPath()
    {
        var byPath = new Dictionary<string, T>(_ordered.Length, StringComparer.Ordinal);
        foreach (var item in _ordered)
        {
            byPath.Add(_pathOf(item), item);
        }

        return byPath;
    }
}
