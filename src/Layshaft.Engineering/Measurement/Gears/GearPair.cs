using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>Two straight-cut gears in mesh at a centre distance (relations of ISO 21771:2007, clause 5, helix angle 0).</summary>
public sealed record GearPair
{
    /// <summary>Puts two gears at a centre distance.</summary>
    /// <param name="driver">The driving gear.</param>
    /// <param name="driven">The driven gear, of the same module and pressure angle.</param>
    /// <param name="centreDistance">Distance of the axes, so that the base circles do not overlap.</param>
    /// <exception cref="ArgumentException">The gears do not belong together, or the distance is too short.</exception>
    public GearPair(SpurGear driver, SpurGear driven, Length centreDistance)
    {
        (Driver, Driven) = (driver, Matching(driver, driven));
        if (!(centreDistance > (driver.BaseDiameter + driven.BaseDiameter) / 2))
        {
            throw new ArgumentException($"centre distance {centreDistance} is too short: the base circles overlap", nameof(centreDistance));
        }

        CentreDistance = centreDistance;
    }

    /// <summary>The driving gear.</summary>
    public SpurGear Driver { get; private init; }

    /// <summary>The driven gear.</summary>
    public SpurGear Driven { get; private init; }

    /// <summary>Distance of the axes a.</summary>
    public Length CentreDistance { get; }

    /// <summary>Centre distance without profile shift, m(z₁ + z₂)/2.</summary>
    public Length ReferenceCentreDistance => (Driver.PitchDiameter + Driven.PitchDiameter) / 2;

    /// <summary>Working pressure angle α_w from cos α_w = a₀·cos α/a.</summary>
    public Angle WorkingPressureAngle => Angle.FromRadians(WorkingRad);

    /// <summary>Centre distance factor y = (a - a₀)/m, without unit.</summary>
    public double CentreDistanceFactor => (CentreDistance - ReferenceCentreDistance) / Driver.Module;

    /// <summary>Working pitch diameter of the driver, the circle on which it rolls.</summary>
    public Length DriverWorkingDiameter => 2 * CentreDistance * Driver.Teeth / (Driver.Teeth + Driven.Teeth);

    /// <summary>Working pitch diameter of the driven gear.</summary>
    public Length DrivenWorkingDiameter => 2 * CentreDistance * Driven.Teeth / (Driver.Teeth + Driven.Teeth);

    /// <summary>
    /// Circumferential backlash at the working pitch circle: the pitch less both tooth thicknesses there. Negative where the
    /// teeth would have to overlap.
    /// </summary>
    public Length CircumferentialBacklash =>
        (Math.PI * DriverWorkingDiameter / Driver.Teeth) - Driver.ThicknessAt(DriverWorkingDiameter) - Driven.ThicknessAt(DrivenWorkingDiameter);

    /// <summary>Normal backlash, the gap that a feeler finds between flanks: circumferential backlash times cos α_w.</summary>
    public Length NormalBacklash => CircumferentialBacklash * Math.Cos(WorkingRad);

    /// <summary>Whether a tip reaches below the other gear's base circle tangent point: the flanks would jam or the root be dug.</summary>
    public bool Interferes => TipReachM(Driver) > LineOfActionM || TipReachM(Driven) > LineOfActionM;

    /// <summary>
    /// Contact ratio ε_α: length of the path of contact over the base pitch, the path ending at the base circle tangent points.
    /// Undercut takes more off it than this says.
    /// </summary>
    public double ContactRatio => ContactRatioOf(Math.Min(TipReachM(Driver), LineOfActionM), Math.Min(TipReachM(Driven), LineOfActionM));

    /// <summary>Contact ratio by the tip circles alone, as tables give it; the same unless the pair interferes.</summary>
    public double TipCircleContactRatio => ContactRatioOf(TipReachM(Driver), TipReachM(Driven));

    private double WorkingRad => Math.Acos(ReferenceCentreDistance * Math.Cos(Driver.PressureAngle.Radians) / CentreDistance);

    private double LineOfActionM => CentreDistance.Meters * Math.Sin(WorkingRad);

    /// <summary>Puts two gears at the distance where their shifts leave no backlash: inv α_w = inv α + 2(x₁ + x₂)tan α/(z₁ + z₂).</summary>
    /// <param name="driver">The driving gear.</param>
    /// <param name="driven">The driven gear, of the same module and pressure angle.</param>
    /// <returns>The pair; thinned teeth keep their play.</returns>
    /// <exception cref="ArgumentException">The gears do not belong together, or their shifts are so negative that no distance fits.</exception>
    public static GearPair AtShiftedDistance(SpurGear driver, SpurGear driven)
    {
        Matching(driver, driven);
        var alphaRad = driver.PressureAngle.Radians;
        var involute = Involute.Function(alphaRad)
            + (2 * (driver.ProfileShift + driven.ProfileShift) * Math.Tan(alphaRad) / (driver.Teeth + driven.Teeth));
        if (involute <= 0)
        {
            throw new ArgumentException("the profile shifts are so negative that no centre distance fits", nameof(driven));
        }

        var reference = (driver.PitchDiameter + driven.PitchDiameter) / 2;
        return new GearPair(driver, driven, reference * Math.Cos(alphaRad) / Math.Cos(Involute.InverseRad(involute)));
    }

    /// <summary>The pair with tips shortened by (x₁ + x₂ - y)m so that the full tip clearance of the basic rack is kept.</summary>
    /// <returns>The pair with shorter tips.</returns>
    public GearPair WithFullTipClearance()
    {
        var shortening = (Driver.ProfileShift + Driven.ProfileShift - CentreDistanceFactor) * Driver.Module;
        return shortening <= Length.Zero ? this : this with { Driver = Shortened(Driver, shortening), Driven = Shortened(Driven, shortening) };
    }

    private static SpurGear Shortened(SpurGear gear, Length by) =>
        gear with { TipDiameter = gear.PitchDiameter + (2 * (((gear.Rack.Addendum + gear.ProfileShift) * gear.Module) - by)) };

    private static SpurGear Matching(SpurGear driver, SpurGear driven)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(driven);
        var same = Math.Abs((driver.Module / driven.Module) - 1) < 1e-9
            && Math.Abs(driver.PressureAngle.Radians - driven.PressureAngle.Radians) < 1e-9;
        return same ? driven : throw new ArgumentException("gears mesh only with the same module and pressure angle", nameof(driven));
    }

    // A tip inside its base circle has no involute left to touch with.
    private static double TipReachM(SpurGear gear) => gear.TipDiameter <= gear.BaseDiameter
        ? 0
        : gear.BaseDiameter.Meters / 2 * Math.Tan(gear.PressureAngleAtRad(gear.TipDiameter));

    private double ContactRatioOf(double driverReachM, double drivenReachM) =>
        Math.Max(0, driverReachM + drivenReachM - LineOfActionM) / Driver.BasePitch.Meters;
}
