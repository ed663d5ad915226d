using System.CommandLine;
using Layshaft.Cli.Bench;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft measure</c>: what a gear's span or size over pins should be, and what a reading means.</summary>
internal static class MeasureCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var teeth = Text("--teeth", "COUNT", "Teeth of the gear.");
        var module = Text("--module", "LENGTH", "Its module, such as \"3 mm\".");
        var angle = Text("--pressure-angle", "ANGLE", "Its pressure angle; 20° where nothing is said.");
        var shift = Text("--shift", "COEFFICIENT", "Its profile shift coefficient; 0 where nothing is said.");
        var span = Text("--span", "COUNT", "Over how many teeth the span is taken; the best where nothing is said.");
        var pin = Text("--pin", "LENGTH", "Diameter of two pins, to measure over them instead.");
        var whenNew = Text("--new", "LENGTH", "The size when new, from the maker or etched on the gear.");
        var reading = Text("--reading", "VALUES", "What was measured: one reading or several.");
        var errorLimit = Text("--error-limit", "LENGTH", "How far the gauge may be off.");
        var json = new Option<bool>("--json") { Description = "Write the answer as data." };
        var command = new Command("measure", "Say what a gear should measure and what a reading means. Example: layshaft measure --teeth 19 --module \"3 mm\" --shift 0.572 --reading \"24.06 mm\"")
        {
            teeth, module, angle, shift, span, pin, whenNew, reading, errorLimit, json,
        };
        command.SetAction(parsed =>
        {
            var question = new GearFigures(
                parsed.GetValue(teeth), parsed.GetValue(module), parsed.GetValue(angle), parsed.GetValue(shift), parsed.GetValue(span),
                parsed.GetValue(pin), parsed.GetValue(whenNew), parsed.GetValue(reading), parsed.GetValue(errorLimit)).Read();
            if (question.Wrong is { } wrong)
            {
                return BenchOutput.Wrong(wrong, question.Remedy, errors);
            }

            var answer = new GearAnswer(question.Value!);
            return BenchOutput.Answer(answer.Lines(BenchFigures.Create()), answer.Json, parsed.GetValue(json), output);
        });
        return command;
    }

    private static Option<string?> Text(string name, string form, string description) => new(name) { HelpName = form, Description = description };
}
