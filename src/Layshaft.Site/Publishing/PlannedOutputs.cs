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

    private PlannedOutputs(PathTable paths, Column[] columns, IReadOnlyList<PlannedOutput> samples) => (Paths, _columns, _samples) = (paths, columns, samples);

    public int Count => _columns.Length;

    public PlannedOutput this[int index] => _columns[index] is var column && column.Key == default
        ? _samples[column.Sample]
        : _samples[column.Sample].With(new(Paths, index), column.Key, column.Turn);

    /// <summary>Their paths.</summary>
    internal PathTable Paths { get; }

    public IEnumerator<PlannedOutput> GetEnumerator() => Enumerable.Range(0, Count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Outputs in any order.</summary>
    /// <param name="outputs">The outputs; gone through once.</param>
    /// <param name="before">The paths of the site that stands, which are mostly the same ones.</param>
    internal static PlannedOutputs Of(IEnumerable<PlannedOutput> outputs, PathTable before)
    {
        var (columns, samples) = (new List<Column>(before.Count), new List<PlannedOutput>());
        var paths = PathTable.Of(outputs.Select(Noted), before, out var order);
        return new(paths, [.. order.Select(i => columns[i])], samples);

        PlacedPath Noted(PlannedOutput output)
        {
            // Neighbours of one group differ by path, key and turn alone.
            if (output.KnownKey is null || samples is not [.., var last] || !last.IsLike(output))
            {
                samples.Add(output);
            }

            columns.Add(new(output.KnownKey ?? default, samples.Count - 1, output.Turn));
            return output.Place;
        }
    }

    /// <summary>The key of an output, where it is known by that.</summary>
    /// <param name="index">Which.</param>
    internal ContentHash? KeyOf(int index) => _columns[index].Key is var key && key == default ? null : key;

    /// <summary>The group of an output; null where it has none.</summary>
    /// <param name="index">Which.</param>
    internal OutputGroup? GroupOf(int index) => _samples[_columns[index].Sample].Group;

    private readonly record struct Column(ContentHash Key, int Sample, int Turn);
}
