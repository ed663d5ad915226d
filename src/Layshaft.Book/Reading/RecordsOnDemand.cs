using System.Collections;
using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.ExceptionServices;

namespace Layshaft.Book.Reading;

/// <summary>The records of one kind, each read when it is asked for. For many threads at once.</summary>
/// <typeparam name="T">The record of the kind.</typeparam>
/// <param name="names">Their names, in order; each has a file in which nothing is wrong.</param>
/// <param name="read">Reads one.</param>
internal sealed class RecordsOnDemand<T>(IReadOnlyList<string> names, Func<string, T> read) : IReadOnlyDictionary<string, T>
    where T : class
{
    private readonly HashSet<string> known = [.. names];
    private readonly ConcurrentDictionary<string, T> records = new(StringComparer.Ordinal);

    public int Count => names.Count;

    public IEnumerable<string> Keys => names;

    public IEnumerable<T> Values => ReadAll().Select(n => this[n]);

    public T this[string key] => TryGetValue(key, out var record) ? record : throw new KeyNotFoundException($"There is no '{key}'.");

    public bool ContainsKey(string key) => known.Contains(key);

    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value)
    {
        value = known.Contains(key) ? records.GetOrAdd(key, read) : null;
        return value is not null;
    }

    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => ReadAll().Select(n => KeyValuePair.Create(n, this[n])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    // All at once are read side by side.
    private IReadOnlyList<string> ReadAll()
    {
        try
        {
            Parallel.ForEach(names, n => TryGetValue(n, out _));
            return names;
        }
        catch (AggregateException e)
        {
            ExceptionDispatchInfo.Throw(e.InnerExceptions[0]);
            throw;
        }
    }
}
