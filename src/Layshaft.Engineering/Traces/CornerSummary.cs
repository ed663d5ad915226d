using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>One corner over all whole laps.</summary>
/// <param name="InLap">Where it is slowest: mean distance since the lap began.</param>
/// <param name="Times">How many laps show it.</param>
/// <param name="LeastSpeed">Mean of the least speeds.</param>
/// <param name="LeastScatter">Standard deviation of the least speeds from lap to lap; null with one lap.</param>
/// <param name="ExitSpeed">Mean speed at which full throttle begins; null when that is not known.</param>
/// <param name="TopSpeed">Greatest speed on the straight after it in any lap.</param>
/// <param name="ToNext">Mean distance to the slowest point of the next corner; null when no lap shows it.</param>
public sealed record CornerSummary(
    Length InLap, int Times, Speed LeastSpeed, Speed? LeastScatter, Speed? ExitSpeed, Speed TopSpeed, Length? ToNext)
{
    private const double NearShare = 0.012;
    private const double NearM = 25;

    /// <summary>Brings the corners of all whole laps together, in the order of the lap. Those that fewer than half of the laps show are left out.</summary>
    /// <param name="trace">The trace.</param>
    public static IReadOnlyList<CornerSummary> Of(TraceFigures trace)
    {
        ArgumentNullException.ThrowIfNull(trace);
        LapSeen[] laps = [.. trace.Laps.Where(l => !l.HasGaps)];
        var whole = laps.Select(l => l.Number).ToHashSet();
        CornerSeen[] corners = [.. trace.Corners.Where(c => c.At.InLap is not null && whole.Contains(c.At.Lap)).OrderBy(c => c.At.InLap!.Value)];
        if (corners.Length == 0)
        {
            return [];
        }

        double lapM = laps.Average(l => l.Distance.Meters);
        double near = Math.Max(NearM, NearShare * lapM);
        var groups = new List<List<CornerSeen>> { new() { corners[0] } };
        foreach (CornerSeen corner in corners.Skip(1))
        {
            if (corner.At.InLap!.Value.Meters - groups[^1][^1].At.InLap!.Value.Meters > near)
            {
                groups.Add([]);
            }

            groups[^1].Add(corner);
        }

        // A corner at the place where laps begin lies at both ends.
        if (groups.Count > 1 && groups[0][0].At.InLap!.Value.Meters + lapM - groups[^1][^1].At.InLap!.Value.Meters <= near)
        {
            groups[0].AddRange(groups[^1]);
            groups.RemoveAt(groups.Count - 1);
        }

        return [.. groups.Where(g => g.Count >= (laps.Length + 1) / 2).Select(g => Of(g, lapM))];
    }

    private static CornerSummary Of(List<CornerSeen> group, double lapM)
    {
        double first = group[0].At.InLap!.Value.Meters;
        double mean = group.Average(c => c.LeastSpeed.MetersPerSecond);
        double square = group.Sum(c => (c.LeastSpeed.MetersPerSecond - mean) * (c.LeastSpeed.MetersPerSecond - mean));
        double[] exits = [.. group.Where(c => c.ExitSpeed is not null).Select(c => c.ExitSpeed!.Value.MetersPerSecond)];
        double[] next = [.. group.Where(c => c.ToNext is not null).Select(c => c.ToNext!.Value.Meters)];
        return new CornerSummary(
            Length.FromMeters(group.Average(c => c.At.InLap!.Value.Meters - (c.At.InLap.Value.Meters - first > lapM / 2 ? lapM : 0))),
            group.Count,
            Speed.FromMetersPerSecond(mean),
            group.Count > 1 ? Speed.FromMetersPerSecond(Math.Sqrt(square / (group.Count - 1))) : null,
            2 * exits.Length > group.Count ? Speed.FromMetersPerSecond(exits.Average()) : null,
            group.Max(c => c.TopSpeed),
            next.Length > 0 ? Length.FromMeters(next.Average()) : null);
    }
}
