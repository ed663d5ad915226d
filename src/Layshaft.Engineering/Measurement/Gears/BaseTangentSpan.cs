using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>
/// Span (base tangent length) over k teeth, taken with disc anvils: it needs neither a true bore nor a true tip circle
/// (ISO 21771:2007, 6; straight-cut).
/// </summary>
public static class BaseTangentSpan
{
    /// <summary>The span W over k teeth: (k - 1) base pitches and one tooth thickness at the base circle.</summary>
    /// <param name="gear">The gear, with the thickness that its teeth have.</param>
    /// <param name="teethSpanned">k, 1 or more and below the number of teeth.</param>
    /// <returns>The span.</returns>
    /// <exception cref="ArgumentOutOfRangeException">k is outside its range.</exception>
    public static Length Over(SpurGear gear, int teethSpanned)
    {
        CheckSpanned(gear, teethSpanned);
        return ((teethSpanned - 1) * gear.BasePitch) + gear.ThicknessAt(gear.BaseDiameter);
    }

    /// <summary>The number of teeth, not rounded, whose span touches the flanks on the circle d + 2x·m.</summary>
    /// <param name="gear">The gear.</param>
    /// <returns>k as a real number.</returns>
    public static double IdealTeethSpanned(SpurGear gear)
    {
        ArgumentNullException.ThrowIfNull(gear);
        var alphaRad = gear.PressureAngle.Radians;
        var shift = gear.ProfileShift / gear.Teeth;
        var cosine = Math.Cos(alphaRad);
        var reach = Math.Sqrt(Math.Max(0, Math.Pow(1 + (2 * shift), 2) - (cosine * cosine))) / cosine;
        return (gear.Teeth / Math.PI * (reach - Involute.Function(alphaRad) - (2 * shift * Math.Tan(alphaRad)))) + 0.5;
    }

    /// <summary>The best number of teeth to span: the ideal one rounded, at least 2 and at most z/2.</summary>
    /// <param name="gear">The gear.</param>
    /// <returns>k.</returns>
    public static int BestTeethSpanned(SpurGear gear) =>
        Math.Clamp((int)Math.Round(IdealTeethSpanned(gear), MidpointRounding.AwayFromZero), 2, Math.Max(2, gear.Teeth / 2));

    /// <summary>Diameter on which the anvils touch the flanks, √(d_b² + W²).</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="teethSpanned">k, 1 or more and below the number of teeth.</param>
    /// <returns>The diameter.</returns>
    public static Length ContactDiameter(SpurGear gear, int teethSpanned) => Length.FromMeters(
        double.Hypot(Over(gear, teethSpanned).Meters, gear.BaseDiameter.Meters)).ToUnit(gear.Module.Unit);

    /// <summary>Whether the anvils touch the involute: above the root fillet and below the tip.</summary>
    /// <param name="gear">The gear.</param>
    /// <param name="teethSpanned">k, 1 or more and below the number of teeth.</param>
    /// <returns>Whether k teeth can be spanned.</returns>
    public static bool CanSpan(SpurGear gear, int teethSpanned)
    {
        var contact = ContactDiameter(gear, teethSpanned);
        return contact > gear.RootFormDiameter && contact < gear.TipDiameter;
    }

    /// <summary>Tooth thickness along the pitch circle from a span.</summary>
    /// <param name="gear">The gear as drawn.</param>
    /// <param name="teethSpanned">k, 1 or more and below the number of teeth.</param>
    /// <param name="span">The span W.</param>
    /// <returns>The thickness s = d((W - (k - 1)p_b)/d_b - inv α).</returns>
    /// <exception cref="ArgumentOutOfRangeException">k is outside its range.</exception>
    public static Length ToothThickness(SpurGear gear, int teethSpanned, Length span)
    {
        CheckSpanned(gear, teethSpanned);
        var angleRad = ((span - ((teethSpanned - 1) * gear.BasePitch)) / gear.BaseDiameter) - Involute.Function(gear.PressureAngle);
        return gear.PitchDiameter * angleRad;
    }

    /// <summary>Tooth thickness along the pitch circle from a measured span, its uncertainty carried through: 1/cos α for each unit of span.</summary>
    /// <param name="gear">The gear as drawn.</param>
    /// <param name="teethSpanned">k, 1 or more and below the number of teeth.</param>
    /// <param name="span">The measured span, a length.</param>
    /// <returns>The thickness, in the unit of the span.</returns>
    /// <exception cref="ArgumentException">The measurement is no length.</exception>
    public static MeasuredQuantity ToothThickness(SpurGear gear, int teethSpanned, MeasuredQuantity span)
    {
        ArgumentNullException.ThrowIfNull(span);
        var thickness = ToothThickness(gear, teethSpanned, span.AsLength());
        return span.Derived(thickness.As((LengthUnit)span.Unit), 1 / Math.Cos(gear.PressureAngle.Radians));
    }

    /// <summary>Loss of tooth thickness along the pitch circle that a loss of span means, ΔW/cos α.</summary>
    /// <param name="pressureAngle">Pressure angle at the pitch circle.</param>
    /// <param name="spanLoss">Span new less span now.</param>
    /// <returns>The loss of thickness, over both flanks of a tooth together.</returns>
    public static Length ThicknessLoss(Angle pressureAngle, Length spanLoss) => spanLoss / Math.Cos(pressureAngle.Radians);

    private static void CheckSpanned(SpurGear gear, int teethSpanned)
    {
        ArgumentNullException.ThrowIfNull(gear);
        ArgumentOutOfRangeException.ThrowIfLessThan(teethSpanned, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(teethSpanned, gear.Teeth);
    }
}
