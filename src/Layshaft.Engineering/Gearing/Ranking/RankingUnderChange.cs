namespace Layshaft.Engineering.Gearing;

/// <summary>The sets near the front, ranked again on a changed day.</summary>
/// <param name="Change">What changed.</param>
/// <param name="Candidates">The candidates on that day, best first, in the order of <see cref="GearingRanking.Candidates"/>.</param>
public sealed record RankingUnderChange(ConditionChange Change, IReadOnlyList<GearingCandidate> Candidates)
{
    /// <summary>The fastest stocked set that day that may be used; null if there is none.</summary>
    public GearingCandidate? Best => Candidates.FirstOrDefault(candidate => candidate.IsUsable && candidate.IsStocked);

    /// <summary>What a set came to that day; null if it was not ranked.</summary>
    /// <param name="set">The set.</param>
    public GearingCandidate? Find(GearSet set) => Candidates.FirstOrDefault(candidate => candidate.Set == set);
}
