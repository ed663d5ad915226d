using System.CommandLine;

namespace Layshaft.Cli.Commands;

/// <summary>The argument that names the book's folder.</summary>
internal static class BookArgument
{
    public static Argument<DirectoryInfo> Create() => new("BOOK")
    {
        Description = "The folder that holds shop.yaml.",
        DefaultValueFactory = _ => new DirectoryInfo("."),
    };

    /// <summary>Whether the folder is there; says so when it is not.</summary>
    public static bool Exists(DirectoryInfo book, TextWriter errors)
    {
        if (book.Exists)
        {
            return true;
        }

        var written = book.ToString();
        errors.WriteLine(written.StartsWith('-') ? $"There is no option '{written}'. 'layshaft COMMAND --help' shows those of a command." : $"There is no folder '{written}'.");
        return false;
    }
}
