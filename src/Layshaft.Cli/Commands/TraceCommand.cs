using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Assessment.Traces;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft trace FILE BOOK --unit UNIT</c>: what the car itself recorded.</summary>
internal static class TraceCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var file = new Argument<FileInfo>("FILE") { Description = "Trace: a CSV file of the car's data logger. Its layout is in the car's trace_columns." };
        var book = BookArgument.Create();
        var unit = new Option<string>("--unit") { Description = "Unit: the name of its file in units/, without .yaml. Its gears and its car are taken.", Required = true, HelpName = "UNIT" };
        var venue = new Option<string?>("--venue") { Description = "Venue: the name of its file in venues/, without .yaml. It names the straights, and its length counts laps if nothing in the trace does.", HelpName = "VENUE" };
        var json = new Option<bool>("--json") { Description = "Print the result as JSON." };
        var command = new Command("trace", "Show gears, shifts, dog engagements, laps and corners in a CSV trace of the car. Example: layshaft trace sunday.csv demo-data --unit t6-014")
        {
            file, book, unit, venue, json,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(file), parsed.GetRequiredValue(book), parsed.GetRequiredValue(unit), parsed.GetValue(venue), parsed.GetValue(json), output, errors));
        return command;
    }

    private static int Run(FileInfo file, DirectoryInfo folder, string unitId, string? venueId, bool asJson, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var review = BookReview.OfFolder(folder.FullName);
        if (review.Assessment is not { } assessment)
        {
            ProblemLines.Write(review.Problems.Where(p => p.Severity == Severity.Stops), folder, errors);
            errors.WriteLine("Fix these first. No trace was read.");
            return ExitCode.Problems;
        }

        var book = assessment.Book;
        if (!book.Units.TryGetValue(unitId, out var unit))
        {
            return BenchOutput.Wrong($"The book has no unit '{unitId}'.", NearestWord.Advice(unitId, [.. book.Units.Keys]), errors);
        }

        if (unit.RatioSet is null)
        {
            return BenchOutput.Wrong($"{unit.Serial} has no ratio set, so a trace shows no gears of it.", "Name the gearbox of the same car.", errors);
        }

        if (venueId is not null && !book.Venues.ContainsKey(venueId))
        {
            return BenchOutput.Wrong($"The book has no venue '{venueId}'.", NearestWord.Advice(venueId, [.. book.Venues.Keys]), errors);
        }

        var problems = new ProblemList();
        using var stream = RegularFile.Open(file.FullName);
        var venue = venueId is null ? null : book.Venues[venueId];
        var reading = TraceReading.Of(assessment.Gearing, unit, FittedGears.Now(book, unit), venue, stream, file.ToString(), problems);
        foreach (var problem in problems.InOrder())
        {
            errors.WriteLine(problem);
        }

        if (reading is null)
        {
            return ExitCode.Problems;
        }

        if (asJson)
        {
            output.Write(TraceJson.Write(reading));
            output.Write('\n');
        }
        else
        {
            new TraceLines(book.Shop.Units.Speed).Write(reading, output);
        }

        return problems.All.Any(p => p.Severity != Severity.Notice) ? ExitCode.Problems : ExitCode.Fine;
    }
}
