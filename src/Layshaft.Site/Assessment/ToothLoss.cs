using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;

namespace Layshaft.Site.Assessment;

/// <summary>Tooth thickness lost, where a span or a size over pins was measured on a gear whose cut is known.</summary>
public static class ToothLoss
{
    /// <summary>The loss with its uncertainty; null where the measure is neither span nor size over pins, or the gear's cut is not known.</summary>
    /// <param name="measured">What was measured.</param>
    /// <param name="part">On which part.</param>
    /// <param name="gearbox">Its gearbox.</param>
    /// <param name="fitted">The teeth in the unit.</param>
    public static MeasuredQuantity? Of(MeasureAssessment measured, Part part, Gearbox gearbox, FittedTeeth fitted)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(gearbox);
        ArgumentNullException.ThrowIfNull(fitted);
        var cut = part.Kind == PartKind.DropGear ? gearbox.DropGears?.Cut : gearbox.MainGears;
        if (cut is null || cut.PressureAngle.Degrees is < 10 or > 35 || measured.Measure.New is not Length whenNew)
        {
            return null;
        }

        if (measured.Measure.Span is not null)
        {
            return ToothWear.FromSpan(cut.PressureAngle, whenNew, measured.Wear.Measured);
        }

        if (measured.Measure.Pin is not { } pin || fitted.Of(part, gearbox) is not { } teeth)
        {
            return null;
        }

        try
        {
            return ToothWear.FromPins(new SpurGear(teeth, cut.Module, cut.PressureAngle), pin, whenNew, measured.Wear.Measured);
        }
        catch (ArgumentOutOfRangeException)
        {
            // A size that puts the pin inside the base circle belongs to another gear or pin: nothing can be said of the tooth.
            return null;
        }
    }
}
