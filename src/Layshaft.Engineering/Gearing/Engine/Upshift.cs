using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Why an upshift is best made where it is.</summary>
public enum UpshiftReason
{
    /// <summary>The next gear's wheel force overtakes there.</summary>
    ForcesCross,

    /// <summary>The lower gear pulls harder, over all, up to the limiter.</summary>
    Limiter,

    /// <summary>The next gear pulls harder from the lowest speed at which its torque is known.</summary>
    AtOnce,
}

/// <summary>The best upshift out of one gear.</summary>
/// <param name="Gear">The gear that is left, from 1.</param>
/// <param name="At">Engine speed at the shift.</param>
/// <param name="Lands">Engine speed in the next gear at the same road speed.</param>
/// <param name="Reason">Why there.</param>
/// <param name="Crossings">Every engine speed in this gear at which the two wheel forces are equal, rising; may be empty.</param>
public sealed record Upshift(
    int Gear, RotationalSpeed At, RotationalSpeed Lands, UpshiftReason Reason, IReadOnlyList<RotationalSpeed> Crossings);
