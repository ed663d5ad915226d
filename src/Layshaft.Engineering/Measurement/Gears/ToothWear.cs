using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>
/// Tooth thickness lost to wear, along the pitch circle and over both flanks of a tooth together: the new size less the
/// measured one, brought from the span or the size over pins to the tooth (relations of ISO 21771:2007, 6; straight-cut).
/// The new size counts as exact.
/// </summary>
public static class ToothWear
{
    /// <summary>Loss of thickness from a span: ΔW/cos α, whatever the number of teeth spanned.</summary>
    /// <param name="pressureAngle">Pressure angle at the pitch circle.</param>
    /// <param name="newSpan">The span when new.</param>
    /// <param name="span">The measured span, a length.</param>
    /// <returns>The loss with its uncertainty, in the unit of the span; below 0 where the tooth is thicker than new.</returns>
    /// <exception cref="ArgumentException">The measurement is no length.</exception>
    public static MeasuredQuantity FromSpan(Angle pressureAngle, Length newSpan, MeasuredQuantity span)
    {
        ArgumentNullException.ThrowIfNull(span);
        var loss = BaseTangentSpan.ThicknessLoss(pressureAngle, newSpan - span.AsLength());
        return span.Derived(loss.As((LengthUnit)span.Unit), 1 / Math.Cos(pressureAngle.Radians));
    }

    /// <summary>Loss of thickness from a size over two pins.</summary>
    /// <param name="gear">The gear; only its teeth, module and pressure angle count.</param>
    /// <param name="pinDiameter">Diameter of the pins, above 0.</param>
    /// <param name="newSize">The size when new.</param>
    /// <param name="size">The measured size, a length.</param>
    /// <returns>The loss with its uncertainty, in the unit of the size; below 0 where the tooth is thicker than new.</returns>
    /// <exception cref="ArgumentException">The measurement is no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A size puts the pin inside the base circle.</exception>
    public static MeasuredQuantity FromPins(SpurGear gear, Length pinDiameter, Length newSize, MeasuredQuantity size)
    {
        var thickness = SizeOverPins.ToothThickness(gear, pinDiameter, size);
        var loss = SizeOverPins.ToothThickness(gear, pinDiameter, newSize) - thickness.AsLength();
        return thickness with { Number = thickness.Number with { Value = loss.As((LengthUnit)size.Unit) } };
    }
}
