using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Book.Schemas;

/// <summary>
/// The JSON Schema of one kind of file, made from the shape that reads it, so that an editor completes and checks what
/// the reader takes.
/// </summary>
/// <param name="Kind">The kind of file: <c>job</c>.</param>
/// <param name="Folder">The folder of the book that holds such files; empty for the book's own folder.</param>
/// <param name="Depth">How many folders below the book's a file of this kind stands.</param>
/// <param name="Make">Makes the schema of the file's one record.</param>
public sealed record BookSchema(string Kind, string Folder, int Depth, Func<JsonObject> Make)
{
    /// <summary>The folder of a book in which its schemas stand.</summary>
    public const string FolderName = "schema";

    /// <summary>
    /// The dialect that the files declare. Checkers behind YAML editors know draft-07 best; the keywords that are used here
    /// mean the same in every later one.
    /// </summary>
    public const string Dialect = "http://json-schema.org/draft-07/schema#";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One for each kind of file that a book holds.</summary>
    public static IReadOnlyList<BookSchema> All { get; } =
    [
        new("shop", string.Empty, 0, Shop.Shape.Schema),
        new("customer", "customers", 1, Customer.Shape.Schema),
        new("gearbox", "gearboxes", 1, Gearbox.Shape.Schema),
        new("car", "cars", 1, Car.Shape.Schema),
        new("venue", "venues", 1, Venue.Shape.Schema),
        new("unit", "units", 1, Unit.Shape.Schema),
        new("job", "jobs", 3, Job.Shape.Schema),
    ];

    /// <summary>The name of its file: <c>job.json</c>.</summary>
    public string FileName => $"{Kind}.json";

    /// <summary>The comment on the first line of a file of this kind, by which YAML editors find the schema.</summary>
    public string HeaderLine => $"# yaml-language-server: $schema={string.Concat(Enumerable.Repeat("../", Depth))}{FolderName}/{FileName}";

    /// <summary>The schema of the kind that a file of a book is; null when no kind of file stands there.</summary>
    /// <param name="path">From the book's folder, with forward slashes.</param>
    public static BookSchema? For(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return BookLayout.FolderOf(path) is { } folder ? All.First(s => s.Folder == folder) : null;
    }

    /// <summary>The schema as it is written to its file: the same text every time.</summary>
    public string Text()
    {
        var made = Make();
        var whole = new JsonObject { ["$schema"] = Dialect, ["title"] = Kind };
        foreach (var (key, value) in made.ToArray())
        {
            made.Remove(key);
            whole[key] = value;
        }

        return whole.ToJsonString(Readable) + "\n";
    }
}
