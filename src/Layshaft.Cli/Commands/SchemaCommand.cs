using System.CommandLine;
using Layshaft.Book.Schemas;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft schema FOLDER</c>: writes the JSON Schema of each kind of file, for editors.</summary>
internal static class SchemaCommand
{
    public static Command Create(TextWriter output)
    {
        var folder = new Argument<DirectoryInfo>("FOLDER") { Description = $"Where they go: {BookSchema.FolderName}/ in the book, where the first line of its files looks for them." };
        var command = new Command("schema", "Write the JSON Schemas of a book's files, so that an editor completes and checks while typing. Example: layshaft schema demo-data/schema") { folder };
        command.SetAction(parsed =>
        {
            var target = parsed.GetRequiredValue(folder);
            Write(target.FullName);
            output.WriteLine($"Wrote {string.Join(", ", BookSchema.All.Select(s => s.FileName))} in {target}.");
            output.WriteLine("Begin a file with the line that names its schema, such as in a job:");
            output.WriteLine(BookSchema.All.Single(s => s.Kind == "job").HeaderLine);
            return ExitCode.Fine;
        });
        return command;
    }

    /// <summary>Writes all of them; a file that stands there already is one of ours and written anew.</summary>
    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var schema in BookSchema.All)
        {
            File.WriteAllText(Path.Combine(folder, schema.FileName), schema.Text());
        }
    }
}
