using System.CommandLine;
using Layshaft.Cli.Terminal;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft publish BOOK --out FOLDER</c>: writes the site.</summary>
internal static class PublishCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var book = BookArgument.Create();
        var folder = new Option<DirectoryInfo>("--out") { Description = "The folder that the site is written to.", Required = true, HelpName = "FOLDER" };
        var command = new Command("publish", "Write the site of a book. Example: layshaft publish demo-data --out reports") { book, folder };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(book), parsed.GetRequiredValue(folder), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo book, DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        if (!BookArgument.Exists(book, errors))
        {
            return ExitCode.WrongUse;
        }

        var review = BookReview.OfFolder(book.FullName);
        var site = Site.Building.SitePreparation.Of(review, book.FullName);
        ProblemLines.Write(site.Problems, book, errors);
        if (site.Builder is null)
        {
            output.WriteLine($"{ProblemLines.Summary(site.Problems)} Nothing was written.");
            return ExitCode.Problems;
        }

        foreach (var file in site.Builder.Files())
        {
            var made = file.Make();
            foreach (var p in made.Problems) { errors.WriteLine(p); }
            var path = Path.Combine(folder.FullName, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            if (made.Bytes is { } bytes) { File.WriteAllBytes(path, bytes.ToArray()); }
        }

        output.WriteLine(ProblemLines.Summary(site.Problems));
        output.WriteLine($"Open {Path.Combine(folder.ToString(), Addresses.ShopIndex)}");
        return ExitCode.Fine;
    }
}
