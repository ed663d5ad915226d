using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Book.Yaml;
using Layshaft.Site.Assessment;

namespace Layshaft.Site.Tests.Hostile;

/// <summary>
/// The demo book with something planted in every text field that the shapes know, the fields that it leaves out added.
/// Nothing is listed by hand, so a new field is planted as soon as it exists.
/// </summary>
internal sealed class PlantedBook
{
    private static readonly JsonSerializerOptions s_relaxed = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Before a field's name: that it is added to records which leave it out.
    private const char Adding = '+';

    private readonly Func<int, string> payload;
    private readonly Dictionary<string, string> corners = new(StringComparer.Ordinal);
    private int planted;

    private PlantedBook(Func<int, string> payload) => this.payload = payload;

    /// <summary>Every text field of the shapes, such as <c>job.findings[].note</c>.</summary>
    public static IReadOnlyList<string> TextFields { get; } = [.. Roots().SelectMany(r => Fields(r.Schema, r.Name))];

    /// <summary>The fields in which something stands.</summary>
    public SortedSet<string> Planted { get; } = new(StringComparer.Ordinal);

    /// <summary>The fields of which the reader or a check refuses what was to be planted.</summary>
    public SortedSet<string> Refused { get; } = new(StringComparer.Ordinal);

    /// <summary>Plants, and takes out again what is refused, until the book can be published.</summary>
    /// <param name="payload">What to plant, made from a number of its own for each place.</param>
    public static (PlantedBook Planted, BookReview Review) Make(Func<int, string> payload)
    {
        var refused = new HashSet<string>(StringComparer.Ordinal);
        while (true)
        {
            var book = new PlantedBook(payload);
            var files = book.Files(refused, out var places);
            var review = BookReview.Of(files, BookReader.Read(files));
            if (review.Assessment is not null)
            {
                book.Refused.UnionWith(refused.Where(r => r[0] != Adding));
                return (book, review);
            }

            string[] more = [.. review.Problems.Where(p => p.Severity == Severity.Stops).Select(p => places.GetValueOrDefault((p.Place.File, p.Place.Line))).OfType<string>().Distinct()];
            Assert.True(more.Any(refused.Add), string.Join('\n', review.Problems.Where(p => p.Severity == Severity.Stops).Take(20)));
        }
    }

    private static IEnumerable<(string Name, JsonObject Schema, Func<string, bool> Is)> Roots() =>
    [
        ("shop", Shop.Shape.Schema(), p => p == "shop.yaml"),
        ("customer", Customer.Shape.Schema(), p => p.StartsWith("customers/", StringComparison.Ordinal)),
        ("gearbox", Gearbox.Shape.Schema(), p => p.StartsWith("gearboxes/", StringComparison.Ordinal)),
        ("car", Car.Shape.Schema(), p => p.StartsWith("cars/", StringComparison.Ordinal)),
        ("venue", Venue.Shape.Schema(), p => p.StartsWith("venues/", StringComparison.Ordinal)),
        ("unit", Unit.Shape.Schema(), p => p.StartsWith("units/", StringComparison.Ordinal)),
        ("job", Job.Shape.Schema(), p => p.EndsWith("/job.yaml", StringComparison.Ordinal)),
    ];

    private static bool IsText(JsonObject schema) => ((string?)schema["description"])?.EndsWith($"Write {Layshaft.Book.Shapes.Scalars.Text.Words}.", StringComparison.Ordinal) == true;

    private static bool IsTextList(JsonObject schema) => ((string?)schema["description"])?.EndsWith($"each item {Layshaft.Book.Shapes.Scalars.Text.Words}.", StringComparison.Ordinal) == true;

    private static IEnumerable<string> Fields(JsonObject schema, string path)
    {
        foreach (var (key, value) in schema["properties"]?.AsObject() ?? [])
        {
            var field = value!.AsObject();
            if (IsText(field))
            {
                yield return $"{path}.{key}";
            }
            else if (IsTextList(field))
            {
                yield return $"{path}.{key}[]";
            }
            else
            {
                foreach (var inner in Fields(field, $"{path}.{key}").Concat(field["items"] is JsonObject items ? Fields(items, $"{path}.{key}[]") : []))
                {
                    yield return inner;
                }
            }
        }
    }

    private MemoryBookFiles Files(HashSet<string> refused, out Dictionary<(string File, int Line), string> places)
    {
        var contents = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        places = [];
        foreach (var file in DemoBook.Review.Files.All)
        {
            var bytes = DemoBook.Review.Files.Read(file.Path);
            if (file.Path.EndsWith(".md", StringComparison.Ordinal))
            {
                bytes = Encoding.UTF8.GetBytes($"{payload(++planted)}\n\n# {payload(++planted)}\n\n| {payload(++planted)} | b |\n|---|---|\n| c | d |\n");
            }
            else if (Roots().FirstOrDefault(r => file.Path.EndsWith(".yaml", StringComparison.Ordinal) && r.Is(file.Path)) is { Name: not null } root)
            {
                var lines = new List<string>();
                var fields = new Dictionary<int, string>();
                Write((MapNode)NodeReader.Read(file.Path, Encoding.UTF8.GetString(bytes), new ProblemList())!, root.Schema, root.Name, refused, lines, fields);
                bytes = Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n");
                foreach (var (line, field) in fields)
                {
                    places[(file.Path, line)] = field;
                }
            }

            contents[file.Path] = bytes;
        }

        return new MemoryBookFiles(contents);
    }

    // A corner is named in cars and events as its venue names it, so the same name gets the same text.
    private string Payload(string key, Node? entry) => key != "corner" || entry is not ScalarNode name ? payload(++planted)
        : corners.TryGetValue(name.Text, out var text) ? text : corners[name.Text] = payload(++planted);

    // JSON is YAML too, and with one value on a line the line tells which field was refused.
    private void Write(MapNode map, JsonObject schema, string path, HashSet<string> refused, List<string> lines, Dictionary<int, string> fields)
    {
        var known = schema["properties"]!.AsObject();
        lines.Add("{");
        var start = lines.Count;
        foreach (var (key, value) in known)
        {
            var field = value!.AsObject();
            var entry = map.Entries.FirstOrDefault(e => e.Key == key)?.Value;
            var name = IsTextList(field) ? $"{path}.{key}[]" : $"{path}.{key}";
            if ((IsText(field) || IsTextList(field)) && !refused.Contains(name) && (entry is not null || !refused.Contains(Adding + name)))
            {
                lines.Add($"{Quoted(key)}: {(IsText(field) ? Quoted(Payload(key, entry)) : $"[{Quoted(payload(++planted))}]")},");
                fields[lines.Count] = name;
                if (entry is null)
                {
                    // A problem of the whole record is laid to what was added to it, one field after the other.
                    fields.TryAdd(start, Adding + name);
                }

                Planted.Add(name);
            }
            else if (entry is not null)
            {
                lines.Add($"{Quoted(key)}:");
                Write(entry, field, name, refused, lines, fields);
                lines.Add(",");
            }
        }

        lines.Add("}");
    }

    private void Write(Node node, JsonObject schema, string path, HashSet<string> refused, List<string> lines, Dictionary<int, string> fields)
    {
        switch (node)
        {
            case MapNode map when schema["properties"] is not null:
                Write(map, schema, path, refused, lines, fields);
                break;
            case MapNode map:
                lines.Add("{");
                foreach (var entry in map.Entries)
                {
                    lines.Add($"{Quoted(entry.Key)}:");
                    Write(entry.Value, [], path, refused, lines, fields);
                    lines.Add(",");
                }

                lines.Add("}");
                break;
            case ListNode list:
                lines.Add("[");
                foreach (var item in list.Items)
                {
                    Write(item, schema["items"] as JsonObject ?? [], $"{path}[]", refused, lines, fields);
                    lines.Add(",");
                }

                lines.Add("]");
                break;
            default:
                lines.Add(Quoted(((ScalarNode)node).Text));
                break;
        }
    }

    private static string Quoted(string text) => JsonSerializer.Serialize(text, s_relaxed);
}
