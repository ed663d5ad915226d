using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Book.Yaml;
using Layshaft.Cli.Entering;
using Layshaft.Cli.Terminal;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft enter JOB BOOK</c>: asks for the readings of a job at the bench and writes them into its file.</summary>
internal static class EnterCommand
{
    public static Command Create(TextReader input, TextWriter output, TextWriter errors)
    {
        var job = new Argument<string>("JOB") { Description = "Number of an open job." };
        var book = BookArgument.Create();
        var command = new Command("enter", "Ask for each reading of a job and write it into the job file at once. Example: layshaft enter 0636 demo-data") { job, book };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(job), parsed.GetRequiredValue(book), input, output, errors));
        return command;
    }

    private static int Run(string number, DirectoryInfo folder, TextReader input, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var (problems, found) = (new ProblemList(), new ProblemList());
        var files = FolderBookFiles.Look(folder.FullName, problems);
        if (StandingBook.Read(files, problems, found) is not { } standing)
        {
            ProblemLines.Write([.. problems.InOrder().Concat(found.InOrder()).Where(p => p.Severity == Severity.Stops)], folder, errors);
            errors.WriteLine("Fix these first. Nothing was written.");
            return ExitCode.Problems;
        }

        if (standing.JobFiles.FirstOrDefault(f => f.Split('/')[2] == number) is not { } path)
        {
            return BenchOutput.Wrong($"There is no job '{number}'.", NearestWord.Advice(number, [.. standing.JobFiles.Select(f => f.Split('/')[2]).Reverse()]), errors);
        }

        if (UnitOf(files, path) is not { } unit || !standing.Book.Units.TryGetValue(unit, out var known))
        {
            return BenchOutput.Wrong($"{path} cannot be read, or its unit is not in the book.", "Run 'layshaft check' and fix it first.", errors);
        }

        // The job itself may still have blanks; only the unit's other jobs are needed.
        Job[] jobs = [.. standing.ReadJobs(standing.JobFiles, new ProblemList()).Where(j => j.Unit == unit)];
        if (jobs.Any(j => j.Number == number && j.Finished is not null))
        {
            return BenchOutput.Wrong($"Job {number} is finished.", "Change its readings in an editor.", errors);
        }

        var box = standing.Book.GearboxOf(known);
        var session = new EnterSession(
            Question.Of(box, standing.Book.Shop, new LastReadings(jobs.Where(j => j.Number != number))),
            Path.Combine(folder.FullName, path.Replace('/', Path.DirectorySeparatorChar)),
            input,
            output);
        session.Run();
        output.WriteLine($"{session.Written} {(session.Written == 1 ? "change" : "changes")} written to {Path.Combine(folder.ToString(), path)}.");
        return ExitCode.Fine;
    }

    private static string? UnitOf(FolderBookFiles files, string path)
    {
        var unheard = new ProblemList();
        return YamlText.Decode(files.Read(path), path, unheard) is { } text && NodeReader.Read(path, text, unheard) is MapNode root
            && root.Entries.FirstOrDefault(e => e.Key == "unit")?.Value is ScalarNode unit ? unit.Text : null;
    }
}
