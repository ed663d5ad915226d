using System.Collections;

namespace Layshaft.Site.Publishing;

/// <summary>Things with a path, in order of path and by path. Immutable.</summary>
/// <typeparam name="T">What they are.</typeparam>
internal sealed class PathIndex<T> : IReadOnlyCollection<T>
    where T : class
{
    private readonly T[] _ordered;
    private readonly Dictionary<string, T> _byPath;

    /// <summary>An index.</summary>
    /// <param name="items">The things, in any order.</param>
    /// <param name="pathOf">The path of one.</param>
    /// <exception cref="ArgumentException">Two have the same path.</exception>
    internal PathIndex(IEnumerable<T> items, Func<T, string> pathOf)
    {
        _ordered = [.. items];
        Array.Sort(_ordered, (one, other) => string.CompareOrdinal(pathOf(one), pathOf(other)));
        _byPath = new(_ordered.Length, StringComparer.Ordinal);
        foreach (var item in _ordered)
        {
            _byPath.Add(pathOf(item), item);
        }
    }

    public int Count => _ordered.Length;

    /// <summary>The thing at a path, or null.</summary>
    internal T? Find(string path) => _byPath.GetValueOrDefault(path);

    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)_ordered).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
