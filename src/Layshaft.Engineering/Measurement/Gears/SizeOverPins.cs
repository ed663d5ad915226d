using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>Size over two pins laid in opposite tooth spaces, or in the nearest to opposite of an odd number of teeth (ISO 21771:2007, 6; straight-cut).</summary>
public static class SizeOverPins
{
    /// <summary>Size M over two pins.</summary>
    /// <param name="gear">The gear, with the thickness that its teeth have.</param>
    /// <param name="pinDiameter">Diameter of the pins, above 0.</param>
    /// <returns>The size: d_b/cos φ + d_p, the first term times cos(90°/z) for an odd number of teeth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pin is so small that it would lie inside the base circle, or not above 0.</exception>
    public static Length Over(SpurGear gear, Length pinDiameter) =>
        (gear.BaseDiameter * Across(gear) / Math.Cos(PinCentreRad(gear, pinDiameter))) + pinDiameter;

    /// <summary>Pressure angle φ at the centre of a pin: inv φ = s/d + inv α + d_p/d_b - π/z.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="pinDiameter">Diameter of the pin, above 0.</param>
    /// <returns>The angle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pin is so small that it would lie inside the base circle, or not above 0.</exception>
    public static Angle PinCentrePressureAngle(SpurGear gear, Length pinDiameter) =>
        Angle.FromRadians(PinCentreRad(gear, pinDiameter));

    /// <summary>Half the angle of a tooth space at the base circle, π/z - s/d - inv α.</summary>
    /// <param name="gear">The gear.</param>
    /// <returns>The angle; negative where neighbouring involutes cross outside the base circle.</returns>
    public static Angle HalfSpaceAngle(SpurGear gear)
    {
        ArgumentNullException.ThrowIfNull(gear);
        return Angle.FromRadians((Math.PI / gear.Teeth) - (gear.ToothThickness / gear.PitchDiameter) - Involute.Function(gear.PressureAngle));
    }

    /// <summary>The pin that touches the flanks on the circle d + 2x·m; take the nearest that is at hand.</summary>
    /// <param name="gear">The gear.</param>
    /// <returns>Diameter of the pin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The shift is so negative that this circle lies inside the base circle.</exception>
    public static Length IdealPin(SpurGear gear)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var contactRad = gear.PressureAngleAtRad(gear.PitchDiameter + (2 * gear.ProfileShift * gear.Module));
        var halfSpaceRad = HalfSpaceAngle(gear).Radians;
        var centreRad = Math.Tan(contactRad) + halfSpaceRad;
        return gear.BaseDiameter * (Involute.Function(centreRad) + halfSpaceRad);
    }

    /// <summary>What keeps a pin from measuring this gear; <see cref="PinFit.Good"/> where nothing does.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="pinDiameter">Diameter of the pin, above 0.</param>
    /// <returns>The first fault found.</returns>
    public static PinFit Fit(SpurGear gear, Length pinDiameter)
    {
        ArgumentNullException.ThrowIfNull(gear);
        if (PinInvolute(gear, pinDiameter) <= 0)
        {
            return PinFit.RestsOnRoot;
        }

        var centreRad = PinCentreRad(gear, pinDiameter);
        var centreDiameter = gear.BaseDiameter / Math.Cos(centreRad);
        var contactRad = Math.Atan(Math.Tan(centreRad) - (pinDiameter / gear.BaseDiameter));
        var contactDiameter = gear.BaseDiameter / Math.Cos(contactRad);
        return centreDiameter - pinDiameter <= gear.RootDiameter ? PinFit.RestsOnRoot
            : contactRad < 0 || contactDiameter < gear.RootFormDiameter ? PinFit.TouchesFillet
            : contactDiameter > gear.TipDiameter ? PinFit.TouchesTip
            : centreDiameter + pinDiameter <= gear.TipDiameter ? PinFit.BelowTip
            : PinFit.Good;
    }

    /// <summary>Tooth thickness along the pitch circle from a size over pins.</summary>
    /// <param name="gear">The gear as drawn.</param>
    /// <param name="pinDiameter">Diameter of the pins, above 0.</param>
    /// <param name="size">The size M.</param>
    /// <returns>The thickness s = d(inv φ - inv α - d_p/d_b + π/z).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size puts the pin inside the base circle.</exception>
    public static Length ToothThickness(SpurGear gear, Length pinDiameter, Length size)
    {
        var angleRad = Involute.Function(CentreFromSizeRad(gear, pinDiameter, size))
            - Involute.Function(gear.PressureAngle) - (pinDiameter / gear.BaseDiameter) + (Math.PI / gear.Teeth);
        return gear.PitchDiameter * angleRad;
    }

    /// <summary>
    /// Tooth thickness along the pitch circle from a measured size over pins, its uncertainty carried through:
    /// sin φ/cos α for each unit of size. The pins' own size counts as exact.
    /// </summary>
    /// <param name="gear">The gear as drawn.</param>
    /// <param name="pinDiameter">Diameter of the pins, above 0.</param>
    /// <param name="size">The measured size, a length.</param>
    /// <returns>The thickness, in the unit of the size.</returns>
    /// <exception cref="ArgumentException">The measurement is no length.</exception>
    public static MeasuredQuantity ToothThickness(SpurGear gear, Length pinDiameter, MeasuredQuantity size)
    {
        ArgumentNullException.ThrowIfNull(size);
        var length = size.AsLength();
        var thickness = ToothThickness(gear, pinDiameter, length);
        var sensitivity = Math.Sin(CentreFromSizeRad(gear, pinDiameter, length)) / (Math.Cos(gear.PressureAngle.Radians) * Across(gear));
        return size.Derived(thickness.As((LengthUnit)size.Unit), sensitivity);
    }

    private static double Across(SpurGear gear) => int.IsEvenInteger(gear.Teeth) ? 1 : Math.Cos(Math.PI / 2 / gear.Teeth);

    private static double PinInvolute(SpurGear gear, Length pinDiameter) => pinDiameter > Length.Zero
        ? (pinDiameter / gear.BaseDiameter) - HalfSpaceAngle(gear).Radians
        : throw new ArgumentOutOfRangeException(nameof(pinDiameter), pinDiameter, "a pin has a diameter above 0");

    private static double PinCentreRad(SpurGear gear, Length pinDiameter)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var involute = PinInvolute(gear, pinDiameter);
        return involute > 0
            ? Involute.InverseRad(involute)
            : throw new ArgumentOutOfRangeException(nameof(pinDiameter), pinDiameter, "the pin is too small: it would lie inside the base circle");
    }

    private static double CentreFromSizeRad(SpurGear gear, Length pinDiameter, Length size)
    {
        ArgumentNullException.ThrowIfNull(gear);
        return gear.PressureAngleAtRad((size - pinDiameter) / Across(gear));
    }
}
