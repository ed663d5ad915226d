using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft gear BOOK --car CAR --venue VENUE</c>: which gears to fit, and why.</summary>
internal static class GearCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var car = new Option<string>("--car") { Description = "Car: the name of its file in cars/, without .yaml.", Required = true, HelpName = "CAR" };
        var venue = new Option<string>("--venue") { Description = "Venue: the name of its file in venues/, without .yaml.", Required = true, HelpName = "VENUE" };
        var pair = new Option<string?>("--pair") { Description = "Drop pair to check, driven/driver, such as 29/23.", HelpName = "PAIR" };
        var final = new Option<string?>("--final") { Description = "Final drive to check, crown wheel/pinion (driven/driver), such as 35/11.", HelpName = "FINAL" };
        var json = new Option<bool>("--json") { Description = "Print the result as JSON." };
        var command = new Command("gear", "Find which drop gears and final drive to fit for a car at a venue. Example: layshaft gear demo-data --car saloon-44 --venue brackwater")
        {
            book, car, venue, pair, final, json,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(book),
            new GearingQuery(parsed.GetRequiredValue(car), parsed.GetRequiredValue(venue), parsed.GetValue(pair), parsed.GetValue(final)),
            parsed.GetValue(json),
            output,
            errors));
        return command;
    }

    private static int Run(DirectoryInfo folder, GearingQuery query, bool asJson, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var review = BookReview.OfFolder(folder.FullName);
        if (review.Assessment is not { } assessment)
        {
            ProblemLines.Write(review.Problems.Where(p => p.Severity == Severity.Stops), folder, errors);
            errors.WriteLine("Fix these first. No gears were ranked.");
            return ExitCode.Problems;
        }

        var (answer, mistakes) = GearingQueries.Answer(assessment, query);
        foreach (var mistake in mistakes)
        {
            errors.WriteLine(mistake);
        }

        if (answer is null)
        {
            return ExitCode.WrongUse;
        }

        if (asJson)
        {
            output.Write(GearingJson.Write(answer));
            output.Write('\n');
        }
        else
        {
            new GearingLines(assessment.Book.Shop.Units.Speed).Write(answer, output);
        }

        return ExitCode.Fine;
    }
}
