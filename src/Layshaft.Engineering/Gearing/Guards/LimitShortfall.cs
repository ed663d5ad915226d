using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One limit that keeps stocked gears from being used, and how near the stock comes to it.</summary>
/// <param name="Kind">The limit.</param>
/// <param name="Limit">The limit's figure.</param>
/// <param name="Least">The least figure that a combination past the limit reaches.</param>
/// <param name="Count">How many stocked combinations pass it.</param>
/// <param name="FinalDriveBelow">For a shaft: the final drive ratio below which it would stay within its limit at the same top speed; else null.</param>
public sealed record LimitShortfall(GearingCautionKind Kind, IQuantity Limit, IQuantity Least, int Count, double? FinalDriveBelow)
{
    /// <summary>The limits that stocked combinations pass, the one that most of them pass first.</summary>
    /// <param name="ranking">The ranking.</param>
    public static IReadOnlyList<LimitShortfall> Of(GearingRanking ranking)
    {
        ArgumentNullException.ThrowIfNull(ranking);
        return
        [
            .. ranking.Candidates.Where(candidate => candidate.IsStocked)
                .SelectMany(candidate => candidate.PassedLimits.Select(passed => (candidate.FinalDrive, passed.Caution)))
                .GroupBy(passed => passed.Caution.Kind)
                .OrderByDescending(kind => kind.Count())
                .Select(kind =>
                {
                    var (_, least) = kind.MinBy(passed => Share(passed.Caution));
                    double? final = kind.Key is GearingCautionKind.PropshaftSpeed or GearingCautionKind.GearboxOutputSpeed
                        ? kind.Min(passed => passed.FinalDrive.Ratio / Share(passed.Caution))
                        : null;
                    return new LimitShortfall(kind.Key, least.Limit!, least.Figure!, kind.Count(), final);
                }),
        ];
    }

    private static double Share(GearingCaution caution) => caution.Figure!.As(caution.Limit!.Unit) / caution.Limit.As(caution.Limit.Unit);
}
