using System.CommandLine;
using Layshaft.Book.Problems;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft publish BOOK --out FOLDER</c>: writes the site.</summary>
internal static class PublishCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var folder = new Option<DirectoryInfo>("--out") { Description = "Folder for the site.", Required = true, HelpName = "FOLDER" };
        var command = new Command("publish", "Publish a book as a static site. Example: layshaft publish demo-data --out reports") { book, folder };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(book), parsed.GetRequiredValue(folder), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo book, DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(book, errors))
        {
            return ExitCode.WrongUse;
        }

        var watch = PublishWatch.Begin(book.FullName, folder.FullName, TemplateFolders.BesideProgram());
        if (watch?.Unchanged() is { } words)
        {
            return LastWords.Read(words).Say(book, folder, output, errors, "Nothing has changed.");
        }

        return Publish(watch, book, folder, output, errors);
    }

    private static int Publish(PublishWatch? watch, DirectoryInfo book, DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        using var progress = new PublishProgressLines(errors);
        var publish = SitePublish.Run(book.FullName, folder.FullName, new PublishOptions { Book = book.FullName, Progress = progress }, files: watch?.BookFiles());
        progress.Finish();
        if (publish.Result is { } result)
        {
            return Close(watch, result, publish.Problems, book, folder, output, errors);
        }

        ProblemLines.Write(publish.Problems, book, errors);
        output.WriteLine(publish.FailedPage is { } page
            ? $"The page {page} could not be generated from its template. The site is unchanged."
            : $"{ProblemLines.Summary(publish.Problems)} Nothing was written.");
        return ExitCode.Problems;
    }

    private static int Close(
        PublishWatch? watch, PublishResult result, IReadOnlyList<Problem> problems, DirectoryInfo book, DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        foreach (var problem in result.Problems.Concat(result.Warnings))
        {
            errors.WriteLine(problem);
        }

        if (result.Outcome is PublishOutcome.Refused or PublishOutcome.Failed)
        {
            ProblemLines.Write(problems, book, errors);
            output.WriteLine(result.IsCutOff ? "The publish was cut off. Publish again before you upload or send anything." : "Nothing was published. The site is unchanged.");
            return ExitCode.Problems;
        }

        TellOfLinks(result, output);
        var words = new LastWords(
            problems.Any(p => p.Severity != Severity.Notice) ? ExitCode.Problems : ExitCode.Fine,
            ProblemLines.Summary(problems),
            ProblemLines.Of(problems),
            result.ForeignFiles);
        if (result.Warnings.Count == 0)
        {
            watch?.Note(result, words.ToLines());
        }

        return words.Say(book, folder, output, errors, result.Outcome == PublishOutcome.Unchanged
            ? "Nothing has changed."
            : $"{result.Added.Count} files added, {result.Changed.Count} changed, {result.Removed.Count} removed, {result.UnchangedFiles} unchanged.");
    }

    private static void TellOfLinks(PublishResult result, TextWriter output)
    {
        if (result.Withdrawn.Count == 0)
        {
            return;
        }

        var links = result.Withdrawn.Count == 1 ? "1 customer link" : $"{result.Withdrawn.Count} customer links";
        output.WriteLine(result.MovesLinks
            ? $"{links} changed: links are now tied to the customer, no longer to a place in the list of owners. The old ones are withdrawn."
            : $"{links} withdrawn by a change in the book.");
        output.WriteLine($"Old and new addresses: {Path.GetRelativePath(Directory.GetCurrentDirectory(), result.LinkList!)}. Send the new links with 'layshaft handover'.");
    }
}
