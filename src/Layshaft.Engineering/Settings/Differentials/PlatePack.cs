using UnitsNet;

namespace Layshaft.Engineering.Settings.Differentials;

/// <summary>
/// The friction plates of one side of a plate differential. Source of the torque: multi-plate clutch with uniform wear,
/// T = n·μ·F·(r_o + r_i)/2 (Budynas and Nisbett, <i>Shigley's Mechanical Engineering Design</i>, chapter on clutches and brakes;
/// the same constant n·(r_o + r_i)/2 in the Modelica Standard Library, Rotational.Components.Clutch).
/// </summary>
public sealed record PlatePack
{
    /// <summary>Creates a pack.</summary>
    /// <param name="outerDiameter">Outer diameter of the friction face.</param>
    /// <param name="innerDiameter">Inner diameter of the friction face, more than 0 and less than the outer one.</param>
    /// <param name="friction">Coefficient of friction of the plates in their oil, more than 0 and at most 1.</param>
    /// <param name="faces">Friction faces on this side, at least 1 (<see cref="PlateOrder.Faces"/>).</param>
    /// <exception cref="ArgumentException">A value is outside its range.</exception>
    public PlatePack(Length outerDiameter, Length innerDiameter, double friction, int faces)
    {
        if (innerDiameter <= Length.Zero || innerDiameter >= outerDiameter)
        {
            throw new ArgumentException("the inner diameter must lie between 0 and the outer diameter", nameof(innerDiameter));
        }

        if (friction is not (> 0 and <= 1))
        {
            throw new ArgumentException("a coefficient of friction lies between 0 and 1", nameof(friction));
        }

        MeanRadius = (outerDiameter + innerDiameter) / 4;
        Friction = friction;
        Faces = faces >= 1 ? faces : throw new ArgumentException("a pack has at least one friction face", nameof(faces));
    }

    /// <summary>Mean radius of the friction faces.</summary>
    public Length MeanRadius { get; }

    /// <summary>Coefficient of friction.</summary>
    public double Friction { get; }

    /// <summary>Friction faces.</summary>
    public int Faces { get; }

    /// <summary>
    /// Breakaway torque: the torque that turns one output shaft while the other is held and the case is free. Only the pack of the
    /// turned side resists then; with the case held too, both packs resist and the reading is twice this.
    /// </summary>
    /// <param name="preload">Axial force on the pack.</param>
    public Torque BreakawayAt(Force preload) => Torque.FromNewtonMeters(Faces * Friction * MeanRadius.Meters * preload.Newtons);

    /// <summary>The axial force on the pack that a breakaway torque stands for.</summary>
    /// <param name="breakaway">Breakaway torque, measured as for <see cref="BreakawayAt"/>.</param>
    public Force PreloadFor(Torque breakaway) => Force.FromNewtons(breakaway.NewtonMeters / (Faces * Friction * MeanRadius.Meters));

    /// <summary>By how much a shim behind the preload spring changes the breakaway torque.</summary>
    /// <param name="shim">Thickness added or, below 0, removed.</param>
    /// <param name="springRate">Rate of the spring at its fitted height.</param>
    public Torque ChangeWith(Length shim, ForcePerLength springRate) =>
        BreakawayAt(Force.FromNewtons(springRate.NewtonsPerMeter * shim.Meters));

    /// <summary>
    /// Locking value of the ramps: the difference between the torques of the two output shafts as a share of the torque into the
    /// case, from 0 (open) to 1 (locked), without preload. By statics (common practice, no source): each pressure ring carries half
    /// the torque, the ramp turns it into the thrust T/(2·r·tan α), and the packs of both sides add to the difference:
    /// S = n·μ·r_m/(r·tan α). Friction of the ramps and thrust of the bevel gears are left out.
    /// </summary>
    /// <param name="ramp">Angle between the ramp and the plane of rotation, more than 0° and at most 90°; at 90° the ramps do not push.</param>
    /// <param name="rampRadius">Radius at which the cross-pin bears on the ramp.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle or the radius is outside its range.</exception>
    public double LockingValue(Angle ramp, Length rampRadius)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(rampRadius.Meters, nameof(rampRadius));
        if (ramp.Degrees is not (> 0 and <= 90))
        {
            throw new ArgumentOutOfRangeException(nameof(ramp), "a ramp angle lies between 0° and 90°");
        }

        return ramp.Degrees == 90 ? 0 : Math.Min(1, Faces * Friction * MeanRadius.Meters / (rampRadius.Meters * Math.Tan(ramp.Radians)));
    }

    /// <summary>The locking value as far as the coefficient of friction is known (<see cref="BreakawayShims.ChangeUncertainty"/>).</summary>
    /// <param name="ramp">Angle between the ramp and the plane of rotation.</param>
    /// <param name="rampRadius">Radius at which the cross-pin bears on the ramp.</param>
    public (double Low, double High) LockingRange(Angle ramp, Length rampRadius)
    {
        var value = LockingValue(ramp, rampRadius);
        return (value * (1 - BreakawayShims.ChangeUncertainty), Math.Min(1, value * (1 + BreakawayShims.ChangeUncertainty)));
    }

    /// <summary>Whether another build of the same differential locks more (above 0), less (below 0) or as much (0).</summary>
    /// <param name="ramp">Ramp of this build.</param>
    /// <param name="other">Plates of the other build.</param>
    /// <param name="otherRamp">Ramp of the other build.</param>
    public int Compare(Angle ramp, PlatePack other, Angle otherRamp)
    {
        ArgumentNullException.ThrowIfNull(other);
        static double Share(PlatePack pack, Angle angle) => pack.Faces * pack.Friction * pack.MeanRadius.Meters * Math.Cos(angle.Radians) / Math.Sin(angle.Radians);
        var change = Share(other, otherRamp) - Share(this, ramp);
        return Math.Abs(change) < 1e-9 ? 0 : Math.Sign(change);
    }
}
