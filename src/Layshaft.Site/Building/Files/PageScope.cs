using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>
/// What some pages are composed from: a slice of the book that holds all that they may quote, and the fingerprint of exactly
/// that slice. A page cannot read what its fingerprint does not stand for, because it is not there.
/// </summary>
/// <remarks>The slice is worked out when the first page asks for it and let go after the last, so that only the slices being
/// worked on are in memory.</remarks>
public sealed class PageScope
{
    private readonly Func<Composition> _compose;
    private readonly Dictionary<string, Lazy<object>> _made = new(StringComparer.Ordinal);
    private readonly Dictionary<int, (string Key, object Value)> _latest = [];
    private readonly Lock _gate = new();
    private Composition? _composition;

    /// <summary>A scope.</summary>
    /// <param name="name">Its name, none like another's.</param>
    /// <param name="inputs">What stands for everything in it.</param>
    /// <param name="compose">Makes what its pages are composed from.</param>
    public PageScope(string name, IReadOnlyList<PlanInput> inputs, Func<Composition> compose)
    {
        ArgumentNullException.ThrowIfNull(name);
        (_compose, Inputs, Key) = (compose, inputs, PlannedOutput.KeyOf(ProgramFingerprint.Value, inputs));
        Group = new OutputGroup(name, Release);
    }

    /// <summary>What stands for everything in it.</summary>
    public IReadOnlyList<PlanInput> Inputs { get; }

    /// <summary>The key of its pages: one hash over the program and its inputs.</summary>
    public ContentHash Key { get; }

    /// <summary>Its pages are made one after the other.</summary>
    public OutputGroup Group { get; private init; }

    /// <summary>The queue in which it waits for others, see <see cref="OutputGroup.Queue"/>; null for none.</summary>
    public string? Queue
    {
        get => Group.Queue;
        init => Group = Group with { Queue = value };
    }

    /// <summary>What its pages are composed from.</summary>
    public Composition Composition
    {
        get
        {
            lock (_gate)
            {
                return _composition ??= _compose();
            }
        }
    }

    /// <summary>Something that several files of the scope are made from, made once for all of them.</summary>
    public T Once<T>(string key, Func<T> make)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(make);
        Lazy<object>? value;
        lock (_gate)
        {
            if (!_made.TryGetValue(key, out value))
            {
                _made[key] = value = new(make);
            }
        }

        return (T)value.Value;
    }

    /// <summary>Something large that files made one after the other share: kept only until another takes its place on the same thread.</summary>
    public T Latest<T>(string key, Func<T> make)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(make);
        var thread = Environment.CurrentManagedThreadId;
        lock (_gate)
        {
            if (_latest.TryGetValue(thread, out var latest) && latest.Key == key)
            {
                return (T)latest.Value;
            }

            _latest.Remove(thread);
        }

        var value = make();
        lock (_gate)
        {
            _latest[thread] = (key, value);
        }

        return value;
    }

    private void Release()
    {
        lock (_gate)
        {
            _composition = null;
            _latest.Clear();
            _made.Clear();
        }
    }
}
