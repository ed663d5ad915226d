using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The one set to fit, and how it compares. Immutable.</summary>
/// <param name="Recommended">The set to fit; null if every stocked one passes a limit or does not finish.</param>
/// <param name="Fitted">What is fitted; null if it is not known.</param>
/// <param name="AsGood">The sets that the inputs cannot tell from the fastest, fastest first; the recommended one is among them.</param>
/// <param name="Gain">What the recommended set gains on the fitted one (positive: faster); null if there is nothing to compare.</param>
/// <param name="Better">The changed days on which another set is better than the recommended one by more than the inputs can resolve.</param>
public sealed record GearingAdvice(
    GearingCandidate? Recommended,
    GearingCandidate? Fitted,
    IReadOnlyList<GearingCandidate> AsGood,
    TimeDifference? Gain,
    IReadOnlyList<BetterOnChange> Better)
{
    /// <summary>Whether what is fitted is recommended.</summary>
    public bool KeepsFitted => Recommended is not null && Recommended.Set == Fitted?.Set;

    /// <summary>
    /// Of the sets that the inputs cannot tell from the fastest within all limits: the fitted one, since it costs no work; else the one of
    /// least work; then the fewest gears to buy; then the least time on the limiter; then the fastest.
    /// </summary>
    /// <param name="ranking">The ranking.</param>
    /// <param name="fitted">What is fitted; null if it is not known.</param>
    public static GearingAdvice Of(GearingRanking ranking, GearSet? fitted)
    {
        ArgumentNullException.ThrowIfNull(ranking);
        GearingCandidate? incumbent = fitted is null ? null : ranking.Find(fitted);
        if (ranking.Best is not { } fastest)
        {
            return new GearingAdvice(null, incumbent, [], null, []);
        }

        GearingCandidate[] asGood =
        [
            .. ranking.Candidates.Where(candidate => candidate.IsUsable
                && (candidate.Set == fitted || (candidate.IsStocked && candidate.StraightsTime <= fastest.StraightsTime + ranking.Reach)) && !IsSlower(candidate, fastest, ranking)),
        ];
        // Work is asked for only where it gains something: if the fitted set is not as good, the new one is faster beyond doubt.
        bool keeps = asGood.Any(candidate => candidate.Set == fitted);
        GearingCandidate recommended = asGood
            .Where(candidate => keeps || incumbent is not { IsUsable: true } || candidate.Set == fastest.Set || IsSlower(incumbent, candidate, ranking))
            .OrderBy(candidate => fitted is null ? 0 : ranking.Work(fitted, candidate.Set).Hours)
            .ThenBy(candidate => ranking.Bought(candidate.Set))
            .ThenBy(candidate => Math.Round(candidate.OnLimiter.Seconds, 1))
            .ThenBy(candidate => candidate.StraightsTime.Seconds)
            .First();
        return new GearingAdvice(
            recommended,
            incumbent,
            asGood,
            incumbent is null ? null : ranking.Difference(incumbent, recommended),
            [.. ranking.Changes.Select(day => BetterOn(day, recommended, ranking)).OfType<BetterOnChange>()]);
    }

    private static bool IsSlower(GearingCandidate one, GearingCandidate other, GearingRanking ranking) =>
        ranking.Difference(one, other) is not { } difference || (difference.IsResolved && difference.Value > Duration.Zero);

    private static BetterOnChange? BetterOn(RankingUnderChange day, GearingCandidate recommended, GearingRanking ranking)
    {
        if (day.Best is not { } best || day.Find(recommended.Set) is not { } own || best.Set == own.Set)
        {
            return null;
        }

        if (!own.IsFinished)
        {
            return new BetterOnChange(day.Change, best, null);
        }

        // How well the inputs resolve the two sets is worked out on the planned day.
        return ranking.Difference(ranking.Find(best.Set)!, recommended) is { } planned
            && new TimeDifference(own.StraightsTime - best.StraightsTime, planned.Expanded) is { IsResolved: true } loss
                ? new BetterOnChange(day.Change, best, loss)
                : null;
    }
}

/// <summary>A changed day on which another set is better.</summary>
/// <param name="Change">What changed.</param>
/// <param name="Set">The better set, as it does that day.</param>
/// <param name="Loss">What the recommended set loses to it a lap; null if that one does not finish.</param>
public sealed record BetterOnChange(ConditionChange Change, GearingCandidate Set, TimeDifference? Loss);
