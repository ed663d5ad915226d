using System.CommandLine;
using Layshaft.Book.Schemas;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft schema FOLDER</c>: writes the JSON Schema of each kind of file, for editors.</summary>
internal static class SchemaCommand
{
    public static Command Create(TextWriter output)
    {
        var folder = new Argument<DirectoryInfo>("FOLDER") { Description = $"Folder for the schemas. The first line of a book's files expects them in {BookSchema.FolderName}/ in the book." };
        var command = new Command("schema", "Write the JSON Schemas with which an editor completes and checks a book's files. Example: layshaft schema demo-data/schema") { folder };
        command.SetAction(parsed =>
        {
            var target = parsed.GetRequiredValue(folder);
            Write(target.FullName);
            output.WriteLine($"Wrote {string.Join(", ", BookSchema.All.Select(s => s.FileName))} in {target}.");
            output.WriteLine("Start each file with the line that names its schema. For a job:");
            output.WriteLine(BookSchema.All.Single(s => s.Kind == "job").HeaderLine);
            return ExitCode.Fine;
        });
        return command;
    }

    /// <summary>Writes all of them and overwrites existing ones.</summary>
    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var schema in BookSchema.All)
        {
            var path = Path.Combine(folder, schema.FileName);
            File.Delete(path);
            using var file = new StreamWriter(new FileStream(path, FileMode.CreateNew, FileAccess.Write));
            file.Write(schema.Text());
        }
    }
}
