using System.CommandLine;

namespace Layshaft.Cli.Commands;

/// <summary>The argument that names the book's folder.</summary>
internal static class BookArgument
{
    public static Argument<DirectoryInfo> Create() => new("BOOK")
    {
        Description = "The book's folder, which contains shop.yaml.",
        DefaultValueFactory = _ => new DirectoryInfo("."),
    };

    /// <summary>Whether the folder exists; writes an error if it does not.</summary>
    public static bool Exists(DirectoryInfo book, TextWriter errors)
    {
        if (book.Exists)
        {
            return true;
        }

        var written = book.ToString();
        errors.WriteLine(written.StartsWith('-') ? $"There is no option '{written}'. See 'layshaft COMMAND --help'." : $"There is no folder '{written}'.");
        return false;
    }
}
