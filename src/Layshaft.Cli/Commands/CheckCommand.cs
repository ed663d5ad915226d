using System.CommandLine;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft check BOOK</c>: reads and judges a book and lists its problems, nothing else.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var command = new Command("check", "Read a book and list its problems. Example: layshaft check demo-data") { book };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(book), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(folder, errors))
        {
            return ExitCode.WrongUse;
        }

        var review = BookReview.OfFolder(folder.FullName);
        ProblemLines.Write(review.Problems, folder, errors);
        output.WriteLine(ProblemLines.Summary(review.Problems));
        return review.HasProblems ? ExitCode.Problems : ExitCode.Fine;
    }
}
