using System.CommandLine;
using Layshaft.Book.Shapes;
using Layshaft.Cli.Bench;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft shim</c>: which pack to fit, from a trial in the book or from figures.</summary>
internal static class ShimCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var unit = Text("--unit", "UNIT", "Unit in the book; its newest job with a trial is used.");
        var setting = Text("--setting", "SETTING", "Setting: its id in the gearbox file.");
        var trialPack = Text("--trial-pack", "SHIMS", "Trial pack, if no book is used, such as \"0.50 mm, 0.10 mm\".");
        var measured = Text("--measured", "VALUES", "Value measured with it, or several readings separated by commas.");
        var target = Text("--target", "BAND", "Target band, such as \"0.05 to 0.10 mm\".");
        var stock = Text("--stock", "SHIMS", "Shims in stock besides the trial pack, such as \"0.10 mm x 6, 0.20 mm x 4\".");
        var moreShim = Text("--more-shim", "smaller|larger", "Whether adding shim makes the reading smaller or larger.", "smaller");
        var tolerance = Text("--tolerance", "LENGTH", "Thickness tolerance of one shim, plus or minus.", "0.005 mm");
        var errorLimit = Text("--error-limit", "LENGTH", "Error limit of the gauge.");
        var json = new Option<bool>("--json") { Description = "Print the result as JSON." };
        var command = new Command("shim", "Calculate a shim pack from a trial build. Example: layshaft shim demo-data --unit t6-014 --setting lay-float")
        {
            book, unit, setting, trialPack, measured, target, stock, moreShim, tolerance, errorLimit, json,
        };
        command.SetAction(parsed =>
        {
            var figures = new ShimFigures(
                parsed.GetValue(trialPack), parsed.GetValue(measured), parsed.GetValue(target), parsed.GetValue(stock), parsed.GetValue(moreShim), parsed.GetValue(tolerance), parsed.GetValue(errorLimit));
            return Run(parsed.GetRequiredValue(book), parsed.GetValue(unit), parsed.GetValue(setting), figures, parsed.GetValue(json), output, errors);
        });
        return command;
    }

    private static int Run(DirectoryInfo folder, string? unit, string? setting, ShimFigures figures, bool json, TextWriter output, TextWriter errors)
    {
        if (unit is null && setting is null)
        {
            return Answer(figures.Read(), json, output, errors);
        }

        if (unit is null || setting is null)
        {
            return BenchOutput.Wrong("--unit and --setting must be used together.", "Write both, or write neither and give the values instead.", errors);
        }

        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var review = BookReview.OfFolder(folder.FullName);
        if (review.Assessment is not { } assessment)
        {
            ProblemLines.Write(review.Problems, folder, errors);
            return ExitCode.Problems;
        }

        return BreakawayAnswer.Of(assessment.Book, unit, setting) is { } breakaway
            ? breakaway.Wrong is { } wrong
                ? BenchOutput.Wrong(wrong, breakaway.Remedy, errors)
                : BenchOutput.Answer(breakaway.Value!.Lines(BenchFigures.Create()), breakaway.Value.Json, json, output)
            : Answer(ShimFromBook.Read(assessment.Book, unit, setting), json, output, errors);
    }

    private static int Answer(Parsed<ShimQuestion> question, bool json, TextWriter output, TextWriter errors)
    {
        if (question.Wrong is { } wrong)
        {
            return BenchOutput.Wrong(wrong, question.Remedy, errors);
        }

        var answer = ShimAnswer.Of(question.Value!);
        return answer.Wrong is { } impossible
            ? BenchOutput.Wrong(impossible, answer.Remedy, errors)
            : BenchOutput.Answer(answer.Value!.Lines(BenchFigures.Create()), answer.Value!.Json, json, output);
    }

    private static Option<string?> Text(string name, string form, string description) => new(name) { HelpName = form, Description = description };

    private static Option<string> Text(string name, string form, string description, string usual) => new(name) { HelpName = form, Description = description, DefaultValueFactory = _ => usual };
}
