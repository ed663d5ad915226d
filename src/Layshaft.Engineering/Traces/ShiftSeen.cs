using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>One shift in a trace.</summary>
/// <param name="From">The gear that was left, from 1.</param>
/// <param name="To">The gear that was engaged, from 1.</param>
/// <param name="At">Where the gear was left.</param>
/// <param name="RoadSpeed">Road speed at the engagement.</param>
/// <param name="EngineBefore">Engine speed when the gear was left.</param>
/// <param name="EngineAfter">Engine speed at the engagement, as the road speed asks for it.</param>
/// <param name="Time">
/// Time between the gears: from the last row in the old gear to the first in the new, less one row's interval. Of one shift it is
/// uncertain by a row's interval either way; over many shifts that averages out.
/// </param>
/// <param name="TimeUncertainty">Standard uncertainty of <paramref name="Time"/>; null when rows are missing within the shift.</param>
/// <param name="Engagement">What the dogs had to take; null when the rows are too far apart to see it.</param>
public sealed record ShiftSeen(
    int From,
    int To,
    TracePlace At,
    Speed RoadSpeed,
    RotationalSpeed EngineBefore,
    RotationalSpeed EngineAfter,
    Duration Time,
    Duration? TimeUncertainty,
    EngagementSeen? Engagement)
{
    /// <summary>Whether a higher gear was engaged.</summary>
    public bool IsUpshift => To > From;

    /// <summary>
    /// Whether the dogs surely took more than half of the engine's change of speed, as when the drive is not cut or the throttle not
    /// blipped (Layshaft's own convention; that such engagements round the dogs is common practice, no source); null when it cannot be seen.
    /// </summary>
    public bool? IsUnmatched => Engagement is null ? null
        : Math.Abs(Engagement.Difference.RadiansPerSecond) - Engagement.Uncertainty.RadiansPerSecond > 0.5 * FullDifference.RadiansPerSecond;

    /// <summary>The difference at the dogs if the engine kept its speed: what a shift without any matching is.</summary>
    public required RotationalSpeed FullDifference { get; init; }
}

/// <summary>The speed difference that the dogs had to take at one engagement.</summary>
/// <param name="Difference">Speed of the gear over the ring, at the mainshaft; positive when the gear is faster.</param>
/// <param name="Uncertainty">What it may be off by, from the rows' interval and the noise of both channels: 95 of 100 are within.</param>
/// <param name="Energy">What it turned into heat, noise and wear; null when the inertias are not known.</param>
public sealed record EngagementSeen(RotationalSpeed Difference, RotationalSpeed Uncertainty, Energy? Energy)
{
    /// <summary>Whether the difference is surely not zero.</summary>
    public bool IsResolved => Math.Abs(Difference.RadiansPerSecond) > Uncertainty.RadiansPerSecond;
}
