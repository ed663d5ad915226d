using System.CommandLine;
using System.Globalization;
using Layshaft.Book.Schemas;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Cli.Starting;
using Layshaft.Cli.Terminal;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft intake UNIT</c>: creates the next job of a unit from its last one.</summary>
internal static class IntakeCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var unit = new Argument<string>("UNIT") { Description = "Unit: its serial, or the name of its file in units/ without .yaml." };
        var book = BookArgument.Create();
        var received = Text("--received", "DATE", "Day of receipt, such as 2026-03-14. Default: today.");
        var use = Text("--use", "USE", "Total usage, such as \"92.5 h\". Default: a blank to fill in.");
        var complaint = Text("--complaint", "WORDS", "The complaint, in the customer's words. Default: a blank to fill in.");
        var technician = Text("--technician", "ID", "Technician: an id in shop.yaml.");
        var number = Text("--number", "NUMBER", "Job number. Default: the next number of the year.");
        var command = new Command("intake", "Create the next job file for a unit, prefilled from its last job. Example: layshaft intake t6-031 demo-data --use \"140 h\"") { unit, book, received, use, complaint, technician, number };
        command.SetAction(parsed =>
        {
            var day = Read(parsed.GetValue(received) ?? DateTime.Now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Date);
            var run = Read(parsed.GetValue(use), Usage);
            var named = Read(parsed.GetValue(number), Name);
            if ((day.Wrong ?? run.Wrong ?? named.Wrong) is { } wrong)
            {
                return BenchOutput.Wrong(wrong, day.Remedy ?? run.Remedy ?? named.Remedy, errors);
            }

            var question = new IntakeQuestion(parsed.GetRequiredValue(unit), day.Value, parsed.GetValue(use) is null ? null : run.Value, parsed.GetValue(complaint), parsed.GetValue(technician), named.Value);
            return Run(parsed.GetRequiredValue(book), question, output, errors);
        });
        return command;
    }

    private static int Run(DirectoryInfo folder, IntakeQuestion question, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var intake = Intake.Of(folder.FullName, question);
        ProblemLines.Write(intake.Problems, folder, errors);
        if (intake is not { Path: { } path, Draft: { } draft })
        {
            errors.WriteLine(intake.Wrong ?? "Fix these first. Nothing was written.");
            return intake.Problems.Count > 0 ? ExitCode.Problems : ExitCode.WrongUse;
        }

        var target = Path.Combine(folder.FullName, path.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(target)!, "photos"));
        using (var file = new StreamWriter(new FileStream(target, FileMode.CreateNew, FileAccess.Write)))
        {
            file.Write(draft.Text());
        }

        var schemas = Path.Combine(folder.FullName, BookSchema.FolderName);
        if (!Directory.Exists(schemas))
        {
            SchemaCommand.Write(schemas);
        }

        Report(folder, path, draft, output);
        return ExitCode.Fine;
    }

    private static void Report(DirectoryInfo folder, string path, JobDraft draft, TextWriter output)
    {
        output.WriteLine($"Wrote {Path.Combine(folder.ToString(), path)} for {draft.Story.Unit.Serial}{(draft.Story.Last is { } last ? $", after job {last.Number}" : ", its first job")}.");
        if (draft.Blanks.Any())
        {
            output.WriteLine($"Fill in {string.Join(" and ", draft.Blanks.Select(b => $"'{b}'"))}. Until then, 'layshaft check' reports {(draft.Blanks.Count() == 1 ? "it" : "them")} and the site is published without the job.");
        }

        foreach (var part in draft.Story.First)
        {
            output.WriteLine($"Inspect first: {part.Name} ('{draft.Story.GradeOf(part)!.Value.ToString().ToLowerInvariant()}' in job {draft.Story.Seen[part.Id].Job.Number}).");
        }

        output.WriteLine("Put photos into the photos/ folder beside it.");
    }

    private static Parsed<T> Read<T>(string? text, Func<string, Parsed<T>> read) => text is null ? default : read(text);

    private static Parsed<Use> Usage(string text) => Use.Parse(text) is { Wrong: { } wrong } bad
        ? Parsed.Bad<Use>(wrong, bad.Remedy ?? "Write a usage such as 92.5 h.")
        : Use.Parse(text);

    private static Parsed<DateOnly> Date(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
        ? Parsed.Good(day)
        : Parsed.Bad<DateOnly>($"'{text}' is not a date.", "Write a date as year-month-day, such as 2026-03-14.");

    private static Parsed<string> Name(string text) => text.Length is > 0 and <= 40 && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && text.Trim('-') == text && !text.Contains("--", StringComparison.Ordinal)
        ? Parsed.Good(text)
        : Parsed.Bad<string>($"'{text}' is not a job number.", "Write lower-case letters, digits and hyphens, such as 0142.");

    private static Option<string?> Text(string name, string form, string description) => new(name) { HelpName = form, Description = description };
}
