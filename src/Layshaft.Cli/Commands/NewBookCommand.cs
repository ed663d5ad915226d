using System.CommandLine;
using System.Globalization;
using Layshaft.Cli.Starting;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft new-book FOLDER</c>: begins a book with a small one that publishes at once.</summary>
internal static class NewBookCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = new Argument<DirectoryInfo>("FOLDER") { Description = "A new folder, or an empty one." };
        var command = new Command("new-book", "Begin a book: a small one of an invented shop, with remarks that explain it. Example: layshaft new-book my-book") { folder };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), output, errors));
        return command;
    }

    private static int Run(DirectoryInfo folder, TextWriter output, TextWriter errors)
    {
        if (File.Exists(folder.FullName) || (folder.Exists && folder.EnumerateFileSystemInfos().Any()))
        {
            errors.WriteLine($"'{folder}' is not empty. Give a new folder, or an empty one; nothing was written.");
            return ExitCode.WrongUse;
        }

        StarterBook.Write(folder.FullName);
        var name = folder.ToString().Contains(' ', StringComparison.Ordinal) ? $"\"{folder}\"" : folder.ToString();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Wrote a book of {StarterBook.Paths.Count} files in {folder}: an invented shop with one gearbox, one finished job and one open one."));
        output.WriteLine("Begin with shop.yaml; the remarks in each file say what it is for. Then:");
        output.WriteLine($"  layshaft check {name}");
        output.WriteLine($"  layshaft preview {name}");
        output.WriteLine($"  layshaft publish {name} --out reports");
        return ExitCode.Fine;
    }
}
