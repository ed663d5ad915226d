using System.Text.Json.Nodes;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>Every field that a book can hold, from the shapes that read it.</summary>
internal static class BookFields
{
    /// <summary>The fields by path, such as <c>jobs.findings[].sentence</c>, each with what its own words say to write.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } = Walk();

    private static readonly string[] s_plantable = [$"Write {Scalars.Text.Words}", $"each item {Scalars.Text.Words}", Scalars.FileName.Words, Scalars.Money.Words];

    /// <summary>Whether a field takes words, names of files or money, which must be planted.</summary>
    public static bool IsPlantable(string words) =>
        Array.Exists(s_plantable, w => words.Contains(w, StringComparison.Ordinal));

    private static Dictionary<string, string> Walk()
    {
        var found = new Dictionary<string, string>(StringComparer.Ordinal);
        (string Kind, JsonObject Schema)[] kinds =
        [
            ("shop", Shop.Shape.Schema()), ("customers", Customer.Shape.Schema()), ("gearboxes", Gearbox.Shape.Schema()), ("cars", Car.Shape.Schema()),
            ("venues", Venue.Shape.Schema()), ("units", Unit.Shape.Schema()), ("jobs", Job.Shape.Schema()),
        ];
        foreach (var (kind, schema) in kinds)
        {
            Add(kind, schema, string.Empty, found);
        }

        return found;
    }

    private static void Add(string path, JsonObject schema, string words, Dictionary<string, string> found)
    {
        var told = schema["description"] is { } description ? (string)description! : words;
        if (schema["properties"] is JsonObject properties)
        {
            foreach (var (key, value) in properties)
            {
                Add($"{path}.{key}", value!.AsObject(), string.Empty, found);
            }
        }
        else if (schema["items"] is JsonObject items)
        {
            Add($"{path}[]", items, told, found);
        }
        else
        {
            found.Add(path, told);
        }
    }
}
