using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>
/// Which choice to recommend. Times closer than <see cref="Tie"/> are the same to a driver and to figures that rest on
/// assumptions, so among those the work on the car and the time on the limiter decide.
/// </summary>
public static class Recommendation
{
    /// <summary>Less than this a lap tells nothing between two choices: 0.025 s (Layshaft's own convention).</summary>
    public static Duration Tie { get; } = Duration.FromMilliseconds(25);

    /// <summary>
    /// Of the choices within <see cref="Tie"/> of the fastest: one with the final drive that is fitted, before the others; then
    /// the one with the least time on the limiter; then the fastest.
    /// </summary>
    /// <param name="ranking">The ranking.</param>
    /// <param name="fitted">What is in the car; null when it is not known.</param>
    public static Eng.GearingCandidate Of(Eng.GearingRanking ranking, FittedGears? fitted)
    {
        ArgumentNullException.ThrowIfNull(ranking);
        return ranking.Candidates
            .Where(c => c.IsFinished && c.LossToBest <= Tie)
            .OrderBy(c => c.FinalDrive == fitted?.FinalDrive ? 0 : 1)
            .ThenBy(c => Math.Round(c.OnLimiter.Seconds, 1))
            .ThenBy(c => c.LossToBest.Seconds)
            .First();
    }
}
