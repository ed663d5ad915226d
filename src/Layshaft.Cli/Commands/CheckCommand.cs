using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft check BOOK</c>: checks a book, with its photos' headers and its own templates and texts, and lists its problems.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var every = new Option<bool>("--every-place") { Description = "Print every occurrence of a repeated note. By default, notes repeated more than three times are printed once." };
        var command = new Command("check", "Check a book and list its problems. Example: layshaft check demo-data") { book, every };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(book), parsed.GetValue(every), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo folder, bool everyPlace, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var review = BookReview.OfFolder(folder.FullName);
        IReadOnlyList<Problem> problems = review.Assessment is { } assessment
            ? [.. review.Problems.Concat(SiteOverrides.Of(assessment.Book.Shop, folder.FullName).Problems).Concat(WrittenTexts.ProblemsOf(assessment.Book, review.Files)).Concat(PictureInspection.ProblemsOf(assessment.Book, review.Files)).OrderBy(p => p.Place)]
            : review.Problems;
        var lines = everyPlace ? [.. problems.Select(p => p.ToString())] : ProblemLines.Of(problems);
        ProblemLines.Write(lines, folder, errors);
        output.WriteLine(ProblemLines.Summary(problems));
        if (lines.Count < problems.Count)
        {
            output.WriteLine("Repeated notes are printed once; --every-place prints every occurrence.");
        }

        return problems.Any(p => p.Severity != Severity.Notice) ? ExitCode.Problems : ExitCode.Fine;
    }
}
