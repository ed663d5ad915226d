using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>Tooth thickness as a gear tooth caliper finds it at the pitch circle.</summary>
/// <param name="HalfToothAngle">Half the angle of the tooth at the pitch circle, s/d.</param>
/// <param name="Thickness">Straight thickness, d·sin(s/d).</param>
/// <param name="Height">Height from the tip to that chord, to which the caliper's tongue is set: addendum + d(1 - cos(s/d))/2.</param>
public sealed record ChordalThickness(Angle HalfToothAngle, Length Thickness, Length Height)
{
    /// <summary>Works out thickness and height from a gear.</summary>
    /// <param name="gear">The gear, with the tip diameter and tooth thickness that it has.</param>
    /// <returns>What to set and what to expect.</returns>
    public static ChordalThickness Of(SpurGear gear)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var halfRad = gear.ToothThickness / gear.PitchDiameter;
        var addendum = (gear.TipDiameter - gear.PitchDiameter) / 2;
        return new ChordalThickness(
            Angle.FromRadians(halfRad),
            gear.PitchDiameter * Math.Sin(halfRad),
            addendum + (gear.PitchDiameter / 2 * (1 - Math.Cos(halfRad))));
    }
}
