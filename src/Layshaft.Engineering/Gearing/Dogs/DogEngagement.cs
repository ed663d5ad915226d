using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One engagement of one ring.</summary>
/// <param name="Straight">The straight on which, or at whose end, it happens.</param>
/// <param name="Ring">The ring's name.</param>
/// <param name="From">The gear that was left.</param>
/// <param name="To">The gear that was engaged.</param>
/// <param name="RoadSpeed">Road speed at the engagement.</param>
/// <param name="SpeedDifference">Speed of the gear over the ring at the dogs when the throttle is not matched; positive when the gear is faster.</param>
/// <param name="MatchedDifference">The same with a matched throttle, as a magnitude: what the driver still misses by.</param>
/// <param name="Energy">What the engagement turns into heat, noise and wear, not matched; null when the inertias are not known.</param>
/// <param name="MatchedEnergy">The same with a matched throttle.</param>
/// <param name="Relative">
/// Energy over that of the venue's hardest unmatched engagement, with a car taken as far heavier than the input side; 0 to 1.
/// It needs no inertia.
/// </param>
public sealed record DogEngagement(
    string Straight,
    string Ring,
    int From,
    int To,
    Speed RoadSpeed,
    RotationalSpeed SpeedDifference,
    RotationalSpeed MatchedDifference,
    Energy? Energy,
    Energy? MatchedEnergy,
    double Relative)
{
    /// <summary>Whether a higher gear was engaged.</summary>
    public bool IsUpshift => To > From;
}
