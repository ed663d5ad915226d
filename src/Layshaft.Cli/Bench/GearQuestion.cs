using Layshaft.Book.Shapes;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>A gear with the way to measure it.</summary>
/// <param name="Gear">The gear as drawn.</param>
/// <param name="Span">Teeth to span; null for a size over pins.</param>
/// <param name="Pin">Pin diameter; null for a span.</param>
/// <param name="New">The size when new.</param>
/// <param name="NewIsGiven">Whether that was given and not worked out.</param>
/// <param name="Measured">What was measured; null for nothing.</param>
internal sealed record GearQuestion(SpurGear Gear, int? Span, Length? Pin, Length New, bool NewIsGiven, MeasuredQuantity? Measured)
{
    /// <summary>Makes the question, or explains why the gear cannot be measured this way.</summary>
    public static Parsed<GearQuestion> Checked(SpurGear gear, int? span, Length? pin, Length? whenNew, IReadOnlyList<Length> readings, Length? errorLimit)
    {
        var measured = readings.Count == 0
            ? null
            : MeasuredQuantity.From(readings, errorLimit is { } limit ? new Instrument { ErrorLimit = limit } : Instrument.Unknown);
        try
        {
            return pin is { } diameter ? OverPins(gear, diameter, whenNew, measured) : OverTeeth(gear, span ?? BaseTangentSpan.BestTeethSpanned(gear), whenNew, measured);
        }
        catch (ArgumentOutOfRangeException)
        {
            return Parsed.Bad<GearQuestion>("No gear with this tooth count has these sizes.", "Check module, profile shift, pin and readings.");
        }
    }

    /// <summary>Tooth thickness lost against new; null where nothing was measured.</summary>
    public MeasuredQuantity? Loss => Measured is null ? null
        : Pin is { } pin ? ToothWear.FromPins(Gear, pin, New, Measured)
        : ToothWear.FromSpan(Gear.PressureAngle, New, Measured);

    private static Parsed<GearQuestion> OverTeeth(SpurGear gear, int span, Length? whenNew, MeasuredQuantity? measured)
    {
        if (span >= gear.Teeth || !BaseTangentSpan.CanSpan(gear, span))
        {
            var best = BaseTangentSpan.BestTeethSpanned(gear);
            return Parsed.Bad<GearQuestion>(
                FormattableString.Invariant($"This gear cannot be spanned over {span} teeth: the anvils would not touch its flanks."),
                best != span && BaseTangentSpan.CanSpan(gear, best) ? FormattableString.Invariant($"Write --span {best}.") : "Write --pin with a diameter to measure over pins.");
        }

        return Parsed.Good(new GearQuestion(gear, span, null, whenNew ?? BaseTangentSpan.Over(gear, span), whenNew is not null, measured));
    }

    private static Parsed<GearQuestion> OverPins(SpurGear gear, Length pin, Length? whenNew, MeasuredQuantity? measured)
    {
        var fit = SizeOverPins.Fit(gear, pin);
        if (fit != PinFit.Good)
        {
            return Parsed.Bad<GearQuestion>(
                fit switch
                {
                    PinFit.RestsOnRoot => "This pin is too thin: it would rest on the root.",
                    PinFit.TouchesFillet => "This pin is too thin: it would touch the fillet below the flank.",
                    PinFit.TouchesTip => "This pin is too thick: it would touch the tips.",
                    _ => "This pin is too thin: it would lie below the tips.",
                },
                FormattableString.Invariant($"Use a pin of about {SizeOverPins.IdealPin(gear).Millimeters:0.00} mm."));
        }

        var question = new GearQuestion(gear, null, pin, whenNew ?? SizeOverPins.Over(gear, pin), whenNew is not null, measured);
        _ = question.Loss;
        return Parsed.Good(question);
    }
}
