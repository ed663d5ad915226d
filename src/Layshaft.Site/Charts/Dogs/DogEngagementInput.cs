namespace Layshaft.Site.Charts.Dogs;

/// <summary>How the dogs of a ring and of a gear stand to each other.</summary>
public enum DogEngagement
{
    /// <summary>Tip on tip: the ring cannot move on.</summary>
    TipToTip,

    /// <summary>Fully in: the back-cut pulls them together.</summary>
    In,

    /// <summary>The corners strike and slide over each other.</summary>
    Ratcheting,

    /// <summary>Pushed apart by flanks that lean the other way.</summary>
    JumpedOut,
}

/// <summary>Dogs of a ring and a gear, seen from outside, in one or more positions side by side.</summary>
/// <param name="Frame">Name and description.</param>
/// <param name="Panels">The positions with their captions, one or more.</param>
/// <param name="Ring">Word for the ring.</param>
/// <param name="Gear">Word for the gear.</param>
public sealed record DogEngagementInput(ChartFrame Frame, IReadOnlyList<(DogEngagement Position, string Caption)> Panels, string Ring, string Gear);
