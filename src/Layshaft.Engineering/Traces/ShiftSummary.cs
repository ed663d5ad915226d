using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>All shifts from one gear to another.</summary>
/// <param name="From">The gear that was left, from 1.</param>
/// <param name="To">The gear that was engaged, from 1.</param>
/// <param name="Count">How many.</param>
/// <param name="EngineBefore">Mean engine speed when the gear was left.</param>
/// <param name="EngineAfter">Mean engine speed at the engagement.</param>
/// <param name="EngagementsSeen">How many show the speed difference at the dogs.</param>
/// <param name="Unmatched">How many of those the engine was surely not matched for.</param>
/// <param name="MeanDifference">Mean magnitude of the speed difference; null when none is seen.</param>
/// <param name="Greatest">The shift with the greatest difference; null when none is seen.</param>
/// <param name="Energy">Energy of all engagements seen; null when the inertias are not known or none is seen.</param>
public sealed record ShiftSummary(
    int From,
    int To,
    int Count,
    RotationalSpeed EngineBefore,
    RotationalSpeed EngineAfter,
    int EngagementsSeen,
    int Unmatched,
    RotationalSpeed? MeanDifference,
    ShiftSeen? Greatest,
    Energy? Energy)
{
    /// <summary>Sums the shifts up, upshifts first, by the gears.</summary>
    /// <param name="shifts">The shifts of a trace.</param>
    public static IReadOnlyList<ShiftSummary> Of(IReadOnlyList<ShiftSeen> shifts)
    {
        ArgumentNullException.ThrowIfNull(shifts);
        return
        [
            .. shifts.GroupBy(s => (s.From, s.To)).OrderBy(g => g.Key.To < g.Key.From).ThenBy(g => g.Key.From).ThenBy(g => g.Key.To)
                .Select(g => Of(g.Key.From, g.Key.To, [.. g])),
        ];
    }

    /// <summary>Mean time between the gears over all upshifts that show it.</summary>
    /// <param name="shifts">The shifts of a trace.</param>
    /// <returns>The mean with its expanded uncertainty (k = 2); null with fewer than five.</returns>
    public static (Duration Mean, Duration Uncertainty)? UpshiftTime(IReadOnlyList<ShiftSeen> shifts)
    {
        ArgumentNullException.ThrowIfNull(shifts);
        double[] seconds = [.. shifts.Where(s => s.To == s.From + 1 && s.TimeUncertainty is not null).Select(s => s.Time.Seconds)];
        if (seconds.Length < 5)
        {
            return null;
        }

        // What the edges of the gears hide was added to each; half of it is taken as a limit of error (10 % of the time).
        SampleStatistics statistics = SampleStatistics.Of(seconds);
        double scatter = statistics.StandardUncertaintyOfMean ?? 0;
        double edges = 0.1 * statistics.Mean / Math.Sqrt(3);
        return (Duration.FromSeconds(statistics.Mean), Duration.FromSeconds(2 * Math.Sqrt((scatter * scatter) + (edges * edges))));
    }

    private static ShiftSummary Of(int from, int to, ShiftSeen[] shifts)
    {
        ShiftSeen[] seen = [.. shifts.Where(s => s.Engagement is not null)];
        bool hasEnergy = seen.Length > 0 && seen.All(s => s.Engagement!.Energy is not null);
        return new ShiftSummary(
            from,
            to,
            shifts.Length,
            RotationalSpeed.FromRevolutionsPerMinute(shifts.Average(s => s.EngineBefore.RevolutionsPerMinute)),
            RotationalSpeed.FromRevolutionsPerMinute(shifts.Average(s => s.EngineAfter.RevolutionsPerMinute)),
            seen.Length,
            seen.Count(s => s.IsUnmatched == true),
            seen.Length > 0 ? RotationalSpeed.FromRevolutionsPerMinute(seen.Average(s => Math.Abs(s.Engagement!.Difference.RevolutionsPerMinute))) : null,
            seen.MaxBy(s => Math.Abs(s.Engagement!.Difference.RevolutionsPerMinute)),
            hasEnergy ? UnitsNet.Energy.FromJoules(seen.Sum(s => s.Engagement!.Energy!.Value.Joules)) : null);
    }
}
