using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>
/// An external straight-cut gear with involute teeth and profile shift (relations of ISO 21771:2007, helix angle 0).
/// Diameters and thicknesses follow from tooth number, module, pressure angle and shift unless a measured one replaces them.
/// </summary>
public sealed record SpurGear
{
    /// <summary>Describes a gear.</summary>
    /// <param name="teeth">Number of teeth z, 5 or more.</param>
    /// <param name="module">Module m, above 0.</param>
    /// <param name="pressureAngle">Pressure angle α of the basic rack, 10° to 35°.</param>
    /// <param name="profileShift">Profile shift coefficient x, without unit; -2 to 2.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SpurGear(int teeth, Length module, Angle pressureAngle, double profileShift = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(teeth, 5);
        if (!(module > Length.Zero) || !double.IsFinite(module.Meters))
        {
            throw new ArgumentOutOfRangeException(nameof(module), module, "a module is above 0");
        }

        if (!(pressureAngle.Degrees is >= 10 and <= 35))
        {
            throw new ArgumentOutOfRangeException(nameof(pressureAngle), pressureAngle, "a pressure angle lies between 10° and 35°");
        }

        if (!(profileShift is >= -2 and <= 2))
        {
            throw new ArgumentOutOfRangeException(nameof(profileShift), profileShift, "a profile shift coefficient lies between -2 and 2");
        }

        (Teeth, Module, PressureAngle, ProfileShift) = (teeth, module, pressureAngle, profileShift);
        TipDiameter = PitchDiameter + (2 * (Rack.Addendum + profileShift) * module);
    }

    /// <summary>Number of teeth z.</summary>
    public int Teeth { get; }

    /// <summary>Module m.</summary>
    public Length Module { get; }

    /// <summary>Pressure angle α at the pitch circle.</summary>
    public Angle PressureAngle { get; }

    /// <summary>Profile shift coefficient x.</summary>
    public double ProfileShift { get; }

    /// <summary>The basic rack; type A of ISO 53.</summary>
    public BasicRack Rack { get; } = BasicRack.Iso53TypeA;

    /// <summary>Tip diameter, d + 2m(h*a + x) unless a measured or shortened one is set.</summary>
    public Length TipDiameter { get; init; }

    /// <summary>How much thinner the teeth are than the profile shift gives them, at the pitch circle: backlash cut in, or wear.</summary>
    public Length ToothThinning { get; init; }

    /// <summary>Pitch (reference) diameter d = z·m.</summary>
    public Length PitchDiameter => Teeth * Module;

    /// <summary>Base diameter d·cos α.</summary>
    public Length BaseDiameter => PitchDiameter * Math.Cos(PressureAngle.Radians);

    /// <summary>Root diameter d - 2m(h*f - x).</summary>
    public Length RootDiameter => PitchDiameter - (2 * (Rack.Dedendum - ProfileShift) * Module);

    /// <summary>Pitch at the pitch circle, π·m.</summary>
    public Length Pitch => Math.PI * Module;

    /// <summary>Base pitch π·m·cos α: what one tooth more adds to a span.</summary>
    public Length BasePitch => Pitch * Math.Cos(PressureAngle.Radians);

    /// <summary>Tooth thickness along the pitch circle, m(π/2 + 2x·tan α) less the thinning.</summary>
    public Length ToothThickness =>
        (((Math.PI / 2) + (2 * ProfileShift * Math.Tan(PressureAngle.Radians))) * Module) - ToothThinning;

    /// <summary>Tooth thickness along the tip circle; 0 or less for a pointed tooth.</summary>
    public Length TipThickness => ThicknessAt(TipDiameter);

    /// <summary>Least profile shift that a rack cutter makes without undercut, h - z·sin²α/2 with h its straight depth.</summary>
    public double LeastShiftWithoutUndercut =>
        Rack.StraightDepth - (Teeth * Math.Pow(Math.Sin(PressureAngle.Radians), 2) / 2);

    /// <summary>Whether a rack cutter would cut into the flank near the root.</summary>
    public bool IsUndercut => ProfileShift < LeastShiftWithoutUndercut;

    /// <summary>Diameter where the involute begins above the root fillet; the base diameter for an undercut gear, which is then too low.</summary>
    public Length RootFormDiameter
    {
        get
        {
            if (IsUndercut)
            {
                return BaseDiameter;
            }

            var sine = Math.Sin(PressureAngle.Radians);
            var reach = (PitchDiameter.Meters * sine) - (2 * Module.Meters * (Rack.StraightDepth - ProfileShift) / sine);
            return Length.FromMeters(double.Hypot(BaseDiameter.Meters, reach)).ToUnit(Module.Unit);
        }
    }

    /// <summary>Tooth thickness along any circle outside the base circle, d_y(s/d + inv α - inv α_y).</summary>
    /// <param name="diameter">Diameter of the circle, the base diameter or more.</param>
    /// <returns>The thickness along the arc; negative beyond the point where the flanks meet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The circle lies inside the base circle.</exception>
    public Length ThicknessAt(Length diameter) =>
        diameter * ((ToothThickness / PitchDiameter) + Involute.Function(PressureAngle) - Involute.Function(PressureAngleAtRad(diameter)));

    /// <summary>The same gear with a measured tooth thickness at the pitch circle.</summary>
    /// <param name="thickness">Thickness along the pitch circle.</param>
    /// <returns>The gear, thinned by the difference.</returns>
    public SpurGear WithToothThickness(Length thickness) =>
        this with { ToothThinning = ToothThickness + ToothThinning - thickness };

    /// <summary>Pressure angle in radians on a circle.</summary>
    internal double PressureAngleAtRad(Length diameter) => BaseDiameter <= diameter
        ? Math.Acos(BaseDiameter / diameter)
        : throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "there is no involute inside the base circle");
}
