using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>Figures for a gear to be measured, as they were typed.</summary>
/// <param name="Teeth">Number of teeth.</param>
/// <param name="Module">Module.</param>
/// <param name="PressureAngle">Pressure angle; null for 20°.</param>
/// <param name="Shift">Profile shift coefficient; null for 0.</param>
/// <param name="Span">Teeth to span; null for the best.</param>
/// <param name="Pin">Pin diameter; null for a span.</param>
/// <param name="New">The size when new, from the maker or etched on the gear; null to work it out.</param>
/// <param name="Reading">Readings; null for none.</param>
/// <param name="ErrorLimit">Limit of error of the gauge; null where it is not known.</param>
internal sealed record GearFigures(
    string? Teeth, string? Module, string? PressureAngle, string? Shift, string? Span, string? Pin, string? New, string? Reading, string? ErrorLimit)
{
    /// <summary>Reads them.</summary>
    public Parsed<GearQuestion> Read()
    {
        if (Span is not null && Pin is not null)
        {
            return Parsed.Bad<GearQuestion>("--span and --pin cannot be used together.", "Remove one of them.");
        }

        var gear = GearOf();
        var span = Optional(Span, t => Whole(t, "--span", 2, 60));
        var pin = Optional(Pin, t => Lengths.One(t, "--pin"));
        var whenNew = Optional(New, t => Lengths.One(t, "--new"));
        var limit = Optional(ErrorLimit, t => Lengths.One(t, "--error-limit"));
        var readings = Reading is null ? Parsed.Good<IReadOnlyList<Length>>([]) : Lengths.List(Reading, "--reading", "23.44 mm", 5000);
        (string? Wrong, string? Remedy)[] all =
        [
            (gear.Wrong, gear.Remedy), (span.Wrong, span.Remedy), (pin.Wrong, pin.Remedy), (whenNew.Wrong, whenNew.Remedy), (limit.Wrong, limit.Remedy), (readings.Wrong, readings.Remedy),
        ];
        return Array.Find(all, a => a.Wrong is not null) is { Wrong: { } wrong } bad
            ? Parsed.Bad<GearQuestion>(wrong, bad.Remedy)
            : GearQuestion.Checked(gear.Value!, span.Value, pin.Value, whenNew.Value, readings.Value!, limit.Value);
    }

    private Parsed<SpurGear> GearOf()
    {
        if (Teeth is null || Module is null)
        {
            return Parsed.Bad<SpurGear>("--teeth and --module are missing.", "Write, for example, --teeth 19 --module \"3 mm\" --shift 0.572.");
        }

        var teeth = Whole(Teeth, "--teeth", Book.Values.Teeth.Fewest, Book.Values.Teeth.Most);
        var module = Lengths.One(Module, "--module");
        var angle = PressureAngle is null ? Parsed.Good(Angle.FromDegrees(20)) : UnitWords.Angle.Parse(PressureAngle);
        var shift = Shift is null ? Parsed.Good(0.0) : Figure.Parse(Shift);
        return teeth.Wrong is { } t ? Parsed.Bad<SpurGear>(t, teeth.Remedy)
            : module.Wrong is { } m ? Parsed.Bad<SpurGear>(m, module.Remedy)
            : module.Value > Length.FromMillimeters(50) ? Parsed.Bad<SpurGear>($"--module: '{Module}' is out of range.", "Write a module up to 50 mm, such as 3 mm.")
            : angle.Wrong is { } a ? Parsed.Bad<SpurGear>($"--pressure-angle: {a}", angle.Remedy ?? "Write an angle such as 20°.")
            : angle.Value.Degrees is < 10 or > 35 ? Parsed.Bad<SpurGear>($"--pressure-angle: '{PressureAngle}' is out of range.", "Write an angle from 10° to 35°, such as 20°.")
            : shift.Wrong is { } x ? Parsed.Bad<SpurGear>($"--shift: {x}", "Write the coefficient, without a unit, such as 0.25.")
            : Math.Abs(shift.Value) > 1.5 ? Parsed.Bad<SpurGear>($"--shift: '{Shift}' is out of range.", "Write a coefficient from -1.5 to 1.5, not millimetres.")
            : Parsed.Good(new SpurGear(teeth.Value, module.Value, angle.Value, shift.Value));
    }

    private static Parsed<int> Whole(string text, string option, int least, int most)
    {
        var parsed = Figure.ParseWhole(text.Trim());
        return parsed.Wrong is { } wrong ? Parsed.Bad<int>($"{option}: {wrong}", parsed.Remedy ?? FormattableString.Invariant($"Write a number from {least} to {most}."))
            : parsed.Value < least || parsed.Value > most ? Parsed.Bad<int>($"{option}: '{text.Trim()}' is out of range.", FormattableString.Invariant($"Write a number from {least} to {most}."))
            : parsed;
    }

    private static Parsed<T?> Optional<T>(string? text, Func<string, Parsed<T>> read)
        where T : struct
    {
        if (text is null)
        {
            return Parsed.Good<T?>(null);
        }

        var parsed = read(text);
        return new Parsed<T?>(parsed.Wrong is null ? parsed.Value : null, parsed.Wrong, parsed.Remedy);
    }
}
