using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>
/// Joins the straights on both sides of a corner whose radius lets the car go faster than it gets there: it is flat through such a corner,
/// which is then no corner.
/// </summary>
/// <param name="venue">The venue.</param>
/// <param name="braking">The car's braking.</param>
/// <param name="shortest">The car with its shortest gears.</param>
internal sealed class FlatCorners(Venue venue, Acceleration braking, Eng.Car shortest)
{
    /// <summary>The indexes of the book's straights that make each calculated one, in driving order. Marks the flat corners.</summary>
    /// <param name="corners">The corners; those that are flat are replaced.</param>
    public IReadOnlyList<IReadOnlyList<int>> Join(CornerTaken[] corners)
    {
        var isCircuit = venue.Kind == VenueKind.Circuit;
        var count = corners.Length;

        // On a circuit the slowest corner is a corner in any case, so the lap is judged from there.
        var first = isCircuit ? (Enumerable.Range(0, count).MinBy(i => corners[i].Slowest ?? Speed.Zero) + 1) % count : 0;
        var groups = new List<List<int>> { new() };
        for (var i = 0; i < count; i++)
        {
            var at = (first + i) % count;
            groups[^1].Add(at);
            if (i == count - 1)
            {
                break;
            }

            if (corners[at] is { Source: CornerSource.Radius, Slowest: { } steady } && Reached(groups[^1], corners) is { } reached && reached < steady)
            {
                corners[at] = corners[at] with { Source = CornerSource.Flat, Slowest = null, Exit = null, Reached = reached, Steady = steady };
            }
            else
            {
                groups.Add([]);
            }
        }

        // In the book's order again, as far as the joins allow.
        var start = groups.FindIndex(g => g.Contains(0));
        return [.. groups.Skip(start).Concat(groups.Take(start))];
    }

    /// <summary>The calculated straight of some of the book's.</summary>
    /// <param name="venue">The venue.</param>
    /// <param name="indexes">The book's straights, in driving order.</param>
    /// <param name="braking">The car's braking.</param>
    /// <param name="corners">The corners.</param>
    public static Eng.Straight StraightOf(Venue venue, IReadOnlyList<int> indexes, Acceleration braking, IReadOnlyList<CornerTaken> corners)
    {
        Straight[] parts = [.. indexes.Select(i => venue.Straights[i])];
        var before = indexes[0] > 0 ? corners[indexes[0] - 1] : venue.Kind == VenueKind.Circuit ? corners[^1] : null;
        var start = before?.Exit ?? parts[0].ExitSpeed ?? Speed.Zero;
        var length = Length.FromMeters(parts.Sum(p => p.Length.Meters));
        return new Eng.Straight
        {
            Name = string.Join(" / ", parts.Select(p => p.Name)),
            Length = length,
            StartSpeed = start,
            EndSpeed = corners[indexes[^1]].Slowest ?? Speed.Zero,
            Braking = braking,

            // Over a finish line the throttle stays open.
            BrakingDistance = parts[^1].CornerSpeed is null ? Length.Zero : null,
            Grade = parts.Length == 1 ? parts[0].Grade : parts.Sum(p => p.Grade * p.Length.Meters) / length.Meters,
            Heading = parts.MaxBy(p => p.Length)!.Heading,
            CornerMinimum = before?.Slowest is { } slowest ? UnitMath.Min(slowest, start) : null,
        };
    }

    // Greatest speed at the corner, without braking for it: no gears of this car reach more. Null if a figure cannot be used.
    private Speed? Reached(List<int> indexes, CornerTaken[] corners)
    {
        var way = StraightOf(venue, indexes, braking, corners) with { BrakingDistance = Length.Zero };
        return Eng.Venue.Create(venue.Name, [way]).TryGet(out var alone) ? Eng.VenueRun.Ideal(shortest, alone).Straights[0].TopSpeed : null;
    }
}
