using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>Which straight of a venue a place in a lap is on. Immutable.</summary>
/// <remarks>
/// A lap may begin anywhere. The corners of the trace are laid on those of the venue in every rotation; the one whose straights
/// fit best is taken if the next best is at least three times as far off in squares.
/// </remarks>
public sealed class VenuePlaces
{
    private const double LeastContrast = 3;

    private readonly double[] _cornersM;
    private readonly string[] _straights;

    private VenuePlaces(double[] cornersM, string[] straights) => (_cornersM, _straights) = (cornersM, straights);

    /// <summary>Lays a trace's corners on a venue's.</summary>
    /// <param name="corners">The trace's corners in the order of the lap.</param>
    /// <param name="straights">The venue's straights in driving order, each up to the slowest point of the corner at its end.</param>
    /// <returns>The places; null when the numbers differ, a distance is missing or no rotation stands out.</returns>
    public static VenuePlaces? Of(IReadOnlyList<CornerSummary> corners, IReadOnlyList<(string Name, Length Length)> straights)
    {
        ArgumentNullException.ThrowIfNull(corners);
        ArgumentNullException.ThrowIfNull(straights);
        int count = corners.Count;
        if (count < 3 || count != straights.Count || corners.Any(c => c.ToNext is null))
        {
            return null;
        }

        double lapM = corners.Sum(c => c.ToNext!.Value.Meters), venueM = straights.Sum(s => s.Length.Meters);
        double Off(int turn) => Enumerable.Range(0, count).Sum(i =>
        {
            double off = (corners[i].ToNext!.Value.Meters / lapM) - (straights[(i + turn) % count].Length.Meters / venueM);
            return off * off;
        });
        int[] turns = [.. Enumerable.Range(0, count).OrderBy(Off)];
        return Off(turns[1]) < LeastContrast * Off(turns[0])
            ? null
            : new VenuePlaces(
                [.. corners.Select(c => c.InLap.Meters)],
                [.. Enumerable.Range(0, count).Select(i => straights[(i + turns[0]) % count].Name)]);
    }

    /// <summary>The straight on which, or at whose end, a place is.</summary>
    /// <param name="inLap">Distance since the lap began.</param>
    public string StraightAt(Length inLap)
    {
        int at = Array.FindLastIndex(_cornersM, metres => metres <= inLap.Meters);
        return _straights[at < 0 ? ^1 : at];
    }
}
