using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft check BOOK</c>: reads and judges a book, its pictures' headers, own templates and words included, and lists its problems, nothing else.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var every = new Option<bool>("--every-place") { Description = "Print a note at each of its places; otherwise one that says the same at more than three stands once." };
        var command = new Command("check", "Read a book and list its problems. Example: layshaft check demo-data") { book, every };
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
            ? [.. review.Problems.Concat(OwnHand.Of(assessment.Book.Shop, folder.FullName).Problems).Concat(WrittenTexts.ProblemsOf(assessment.Book, review.Files)).Concat(PictureInspection.ProblemsOf(assessment.Book, review.Files)).OrderBy(p => p.Place)]
            : review.Problems;
        var lines = everyPlace ? [.. problems.Select(p => p.ToString())] : ProblemLines.Of(problems);
        ProblemLines.Write(lines, folder, errors);
        output.WriteLine(ProblemLines.Summary(problems));
        if (lines.Count < problems.Count)
        {
            output.WriteLine("Notes that say the same stand once; --every-place prints each at its place.");
        }

        return problems.Any(p => p.Severity != Severity.Notice) ? ExitCode.Problems : ExitCode.Fine;
    }
}
