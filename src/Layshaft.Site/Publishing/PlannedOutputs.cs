using System.Collections;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Planned outputs in order of path. Of those that are known by their key alone, nearly all in a large site, only path, key and turn
/// are held, and made into an output when they are asked for.
/// </summary>
internal sealed class PlannedOutputs : IReadOnlyList<PlannedOutput>
{
    private readonly IReadOnlyList<PlannedOutput> _samples;
    private readonly Column[] _columns;
    private readonly ContentHash[] _keys;

    private PlannedOutputs(PathTable paths, Column[] columns, ContentHash[] keys, IReadOnlyList<PlannedOutput> samples) =>
        (Paths, _columns, _keys, _samples) = (paths, columns, keys, samples);

    public int Count => _columns.Length;

    public PlannedOutput this[int index] => KeyOf(index) is { } key
        ? SampleOf(_columns[index]).With(new(Paths, index), key, _columns[index].Turn)
        : SampleOf(_columns[index]);

    /// <summary>Their paths.</summary>
    internal PathTable Paths { get; }

    public IEnumerator<PlannedOutput> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Outputs in any order, beside those that the site keeps.</summary>
    /// <param name="outputs">The outputs; gone through once.</param>
    /// <param name="kept">What is kept as it is.</param>
    /// <param name="before">The site that stands; its paths are mostly the same ones.</param>
    internal static PlannedOutputs Of(IEnumerable<PlannedOutput> outputs, IReadOnlyList<UnchangedGroup> kept, SiteRegister before)
    {
        var samples = new List<PlannedOutput>();
        var columns = Kept(kept, before, samples);
        var keys = new List<ContentHash>(before.Keys.Hashes);
        var others = new List<(PlacedPath Path, Column Column)>();
        foreach (var output in outputs)
        {
            // Neighbours of one group differ by path, key and turn alone.
            if (output.KnownKey is null || samples is not [.., var last] || !last.IsLike(output))
            {
                samples.Add(output);
            }

            var column = new Column(output.KnownKey is { } key ? NumberOf(key, keys) : 0, samples.Count, output.Turn);
            if (output.Place.PlaceIn(before.Paths) is >= 0 and var place && !columns[place].IsThere)
            {
                columns[place] = column;
            }
            else
            {
                others.Add((output.Place, column));
            }
        }

        return others.Count == 0 && columns.All(c => c.IsThere) ? new(before.Paths, columns, [.. keys], samples) : Merged(columns, others, before.Paths, [.. keys], samples);
    }

    /// <summary>The key of an output, where it is known by that.</summary>
    /// <param name="index">Which.</param>
    internal ContentHash? KeyOf(int index) => _columns[index].Key is > 0 and var number ? _keys[number - 1] : null;

    /// <summary>The group of an output; null where it has none.</summary>
    /// <param name="index">Which.</param>
    internal OutputGroup? GroupOf(int index) => SampleOf(_columns[index]).Group;

    private PlannedOutput SampleOf(Column column) => _samples[column.Sample - 1];

    private static Column[] Kept(IReadOnlyList<UnchangedGroup> kept, SiteRegister before, List<PlannedOutput> samples)
    {
        var (sampleOf, turns, byMark) = (new int[before.Marks.Count + 1], new int[before.Marks.Count + 1], new Dictionary<ContentHash, int>());
        foreach (var group in kept)
        {
            samples.Add(new PlannedOutput(new PlacedPath(string.Empty), default(ContentHash), group.Maker) { Group = group.Group });
            byMark[group.Group.Mark!.Value] = samples.Count;
        }

        for (var number = 1; number < sampleOf.Length; number++)
        {
            sampleOf[number] = byMark.GetValueOrDefault(before.Marks[number - 1]);
        }

        var columns = new Column[before.Count];
        for (var i = 0; i < columns.Length; i++)
        {
            if (before[i].Group is var group && sampleOf[group] > 0)
            {
                columns[i] = new(before.Keys.NumberOf(i), sampleOf[group], turns[group]++);
            }
        }

        return columns;
    }

    private static PlannedOutputs Merged(Column[] columns, List<(PlacedPath Path, Column Column)> others, PathTable before, ContentHash[] keys, IReadOnlyList<PlannedOutput> samples)
    {
        int[] there = [.. Enumerable.Range(0, columns.Length).Where(i => columns[i].IsThere)];
        var paths = before.With(there, [.. others.Select(o => o.Path)], out var order);
        return new(paths, [.. order.Select(o => o < there.Length ? columns[there[o]] : others[o - there.Length].Column)], keys, samples);
    }

    // Neighbours mostly have the same one.
    private static int NumberOf(ContentHash key, List<ContentHash> keys)
    {
        if (keys.Count == 0 || keys[^1] != key)
        {
            keys.Add(key);
        }

        return keys.Count;
    }

    // The number of the key, 0 where none is known, and which sample it is like, counted from one.
    private readonly record struct Column(int Key, int Sample, int Turn)
    {
        internal bool IsThere => Sample > 0;
    }
}
