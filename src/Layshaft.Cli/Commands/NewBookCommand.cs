using System.CommandLine;
using System.Globalization;
using Layshaft.Cli.Starting;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft new-book FOLDER</c>: creates a small book that can be published at once.</summary>
internal static class NewBookCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = new Argument<DirectoryInfo>("FOLDER") { Description = "A new or empty folder." };
        var command = new Command("new-book", "Create a small starter book of an invented workshop, with explanatory comments. Example: layshaft new-book my-book") { folder };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        if (File.Exists(folder.FullName) || (folder.Exists && folder.EnumerateFileSystemInfos().Any()))
        {
            errors.WriteLine($"'{folder}' is not an empty folder. Name a new or empty folder. Nothing was written.");
            return ExitCode.WrongUse;
        }

        StarterBook.Write(folder.FullName);
        var name = folder.ToString().Contains(' ', StringComparison.Ordinal) ? $"\"{folder}\"" : folder.ToString();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Wrote a book of {StarterBook.Paths.Count} files in {folder}: an invented workshop with one gearbox, one finished job and one open job."));
        output.WriteLine("Start with shop.yaml; the comments in each file explain it. Then run:");
        output.WriteLine($"  layshaft check {name}");
        output.WriteLine($"  layshaft preview {name}");
        output.WriteLine($"  layshaft publish {name} --out reports");
        return ExitCode.Fine;
    }
}
