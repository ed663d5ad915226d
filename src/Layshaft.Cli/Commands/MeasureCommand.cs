using System.CommandLine;
using Layshaft.Cli.Bench;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft measure</c>: what a gear's span or size over pins should be, and what a reading means.</summary>
internal static class MeasureCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var teeth = Text("--teeth", "COUNT", "Tooth count.");
        var module = Text("--module", "LENGTH", "Module, such as \"3 mm\".");
        var angle = Text("--pressure-angle", "ANGLE", "Pressure angle.", "20°");
        var shift = Text("--shift", "COEFFICIENT", "Profile shift coefficient.", "0");
        var span = Text("--span", "COUNT", "Number of teeth to span. Default: the most suitable number.");
        var pin = Text("--pin", "LENGTH", "Pin diameter, to measure over two pins instead of a span.");
        var whenNew = Text("--new", "LENGTH", "New size, from the maker or marked on the gear.");
        var reading = Text("--reading", "VALUES", "Measured value, or several readings separated by commas.");
        var errorLimit = Text("--error-limit", "LENGTH", "Error limit of the gauge.");
        var json = new Option<bool>("--json") { Description = "Print the result as JSON." };
        var command = new Command("measure", "Calculate a gear's span or over-pin size, and tooth wear from a reading. Example: layshaft measure --teeth 19 --module \"3 mm\" --shift 0.572 --reading \"24.06 mm\"")
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

    private static Option<string> Text(string name, string form, string description, string usual) => new(name) { HelpName = form, Description = description, DefaultValueFactory = _ => usual };
}
