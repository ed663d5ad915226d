using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Gearing;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft gear BOOK --unit UNIT --venue VENUE</c>: which gears to fit, and why.</summary>
internal static class GearCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var unit = new Option<string?>("--unit") { Description = "Unit: the name of its file in units/, without .yaml. Its ratios, its fitted gears and its car are taken.", HelpName = "UNIT" };
        var car = new Option<string?>("--car") { Description = "Car: the name of its file in cars/, without .yaml. Without --unit, the unit in it is taken.", HelpName = "CAR" };
        var venue = new Option<string>("--venue") { Description = "Venue: the name of its file in venues/, without .yaml.", Required = true, HelpName = "VENUE" };
        var pair = new Option<string?>("--pair") { Description = "Drop pair in hand to compare, driven/driver, such as 29/23.", HelpName = "PAIR" };
        var final = new Option<string?>("--final") { Description = "Final drive in hand to compare, crown wheel/pinion (driven/driver), such as 35/11.", HelpName = "FINAL" };
        var temperature = new Option<string?>("--temperature") { Description = "Air temperature of the day, such as \"28 °C\". Default: standard air at the venue's altitude.", HelpName = "TEMPERATURE" };
        var wind = new Option<string?>("--wind") { Description = "Wind of the day: \"18 km/h\" against the car everywhere, or \"18 km/h from 240°\". Default: calm.", HelpName = "WIND" };
        var json = new Option<bool>("--json") { Description = "Print the result as JSON." };
        var command = new Command("gear", "Find which drop gears and final drive to fit for a car at a venue. Example: layshaft gear demo-data --unit s6-103 --venue brackwater --wind \"18 km/h\"")
        {
            book, unit, car, venue, pair, final, temperature, wind, json,
        };
        command.SetAction(parsed => Run(
            parsed.GetRequiredValue(book),
            new GearingQuery(
                parsed.GetValue(unit), parsed.GetValue(car), parsed.GetRequiredValue(venue), parsed.GetValue(pair), parsed.GetValue(final), parsed.GetValue(temperature), parsed.GetValue(wind)),
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
