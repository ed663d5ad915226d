using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The ranking again on a changed day.</summary>
/// <param name="Change">What changed.</param>
/// <param name="Candidates">The candidates on that day, best first.</param>
/// <param name="IdealTime">The ideal's time on the straights on that day.</param>
/// <param name="PickChanges">Whether another candidate than the planned day's best is best.</param>
/// <param name="LossOfPick">What the planned day's best loses a lap against the best of that day; null when it does not finish.</param>
public sealed record RankingUnderChange(
    ConditionChange Change,
    IReadOnlyList<GearingCandidate> Candidates,
    Duration IdealTime,
    bool PickChanges,
    Duration? LossOfPick);
