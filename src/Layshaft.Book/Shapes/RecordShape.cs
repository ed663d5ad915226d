using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>
/// A group of named fields. The build function asks for each field once, with its shape and its meaning; the same
/// function serves for reading (it is given the fields' values) and for the schema (it is given none, and what it
/// asked for is noted). So a field is added in one line.
/// </summary>
/// <typeparam name="T">The record that is built.</typeparam>
/// <param name="what">What it is, with its article: "a finding".</param>
/// <param name="meaning">One sentence for the schema.</param>
/// <param name="build">Asks for the fields and builds the record. It must not judge the values: they may be missing.</param>
public sealed class RecordShape<T>(string what, string meaning, Func<Fields, T> build) : Shape<T>
{
    /// <inheritdoc/>
    public override string Words => what;

    /// <summary>One sentence on what this is.</summary>
    public string Meaning => meaning;

    /// <inheritdoc/>
    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out T value)
    {
        (value, var complete) = ReadWhatIsThere(node, reading);
        return complete;
    }

    /// <summary>
    /// Reads as much as can be read, so that checks can go on: the record, with nothing in the fields that are wrong, and
    /// whether it is complete. The record is missing only when the node is no group of fields.
    /// </summary>
    public (T? Value, bool Complete) ReadWhatIsThere(Node node, Reading reading)
    {
        ArgumentNullException.ThrowIfNull(node);
        ArgumentNullException.ThrowIfNull(reading);
        if (node is not MapNode map)
        {
            if (node is ScalarNode { Plain: true } line && FieldSlip.Explain(line.Text, reading.At(node)) is { } slip)
            {
                reading.Problems.Add(slip);
                return (default, false);
            }

            reading.Report(node, "wrong-kind", $"Expected {what}, found {node.Words}.", "Write its fields as 'key: value' lines.");
            return (default, false);
        }

        var fields = new Fields(map, reading, what);
        var value = build(fields);
        fields.ReportUnknownAndMissing();
        return (value, !fields.Failed);
    }

    /// <inheritdoc/>
    public override JsonObject Schema()
    {
        var fields = new Fields();
        _ = build(fields);
        var properties = new JsonObject();
        foreach (var field in fields.Described)
        {
            properties[field.Key] = Described(field);
        }

        var required = new JsonArray([.. fields.Described.Where(f => f.Required).Select(f => (JsonNode)f.Key)]);
        return new JsonObject
        {
            ["type"] = "object",
            ["description"] = meaning,
            ["properties"] = properties,
            ["required"] = required,
            ["additionalProperties"] = false,
        };
    }

    private static JsonObject Described(FieldDescription field)
    {
        var schema = field.Schema();
        var nested = (schema["items"] ?? schema)["properties"] is not null;
        var more = nested ? null : schema["description"]?.GetValue<string>();
        schema["description"] = nested ? field.Meaning : $"{field.Meaning} Write {field.Words}.{(more is null ? "" : $" {more}")}";
        return schema;
    }

    /// <summary>The fields in the order in which they are asked for, with their words: for guides and tests.</summary>
    public IReadOnlyList<FieldDescription> Describe()
    {
        var fields = new Fields();
        _ = build(fields);
        return fields.Described;
    }
}

/// <summary>A field as the schema tells of it.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Words">What to write.</param>
/// <param name="Required">Whether it must be there.</param>
/// <param name="Schema">Makes its JSON Schema.</param>
public sealed record FieldDescription(string Key, string Meaning, string Words, bool Required, Func<JsonObject> Schema);

/// <summary>The fields of one record, while it is being read or described.</summary>
public sealed class Fields
{
    private readonly MapNode? map;
    private readonly Reading? reading;
    private readonly string what = string.Empty;
    private readonly List<FieldDescription> described = [];
    private readonly List<string> known = [];
    private readonly List<(string Key, string Words)> missing = [];

    internal Fields()
    {
    }

    internal Fields(MapNode map, Reading reading, string what)
    {
        this.map = map;
        this.reading = reading;
        this.what = what;
    }

    /// <summary>Where the record and its fields stand.</summary>
    public Origin Origin => map is null || reading is null
        ? Origin.None
        : new Origin(reading.At(map), FieldPlaces.Of(map));

    internal bool Failed { get; private set; }

    internal IReadOnlyList<FieldDescription> Described => described;

    /// <summary>A field that must be there.</summary>
    public T Required<T>(string key, Shape<T> shape, string meaning)
    {
        Note(key, shape, meaning, required: true);
        if (map is null || reading is null)
        {
            return default!;
        }

        if (Find(key) is not { } entry)
        {
            missing.Add((key, shape.Words));
            Failed = true;
            return default!;
        }

        // Here, and not where the value is read, since this line can't be taken out.
        if (entry.Value is ScalarNode { IsNothing: true } nothing)
        {
            reading.Report(nothing, "nothing-written", nothing.NothingWritten, $"Write {shape.Words}.");
        }
        else if (shape.TryRead(entry.Value, reading, out var value))
        {
            return value;
        }

        Failed = true;
        return default!;
    }

    /// <summary>A field that may be left out; null then.</summary>
    public T? Optional<T>(string key, Shape<T> shape, string meaning)
        where T : class
        => TryGet(key, shape, meaning, out var value) ? value : null;

    /// <summary>A field that may be left out; null then.</summary>
    public T? OptionalValue<T>(string key, Shape<T> shape, string meaning)
        where T : struct
        => TryGet(key, shape, meaning, out var value) ? value : null;

    /// <summary>A field that may be left out; the given value stands for it then.</summary>
    public T Or<T>(string key, Shape<T> shape, T fallback, string meaning) =>
        TryGet(key, shape, meaning, out var value) ? value : fallback;

    /// <summary>A list that may be left out; empty then.</summary>
    public IReadOnlyList<T> List<T>(string key, Shape<T> item, string meaning) =>
        TryGet(key, new ListShape<T>(item), meaning, out var value) ? value : [];

    internal void ReportUnknownAndMissing()
    {
        foreach (var entry in map!.Entries)
        {
            if (!known.Contains(entry.Key))
            {
                // A slip in the name of a field that must be there is one mistake, not two.
                string[] unset = [.. known.Where(k => Find(k) is null)];
                var meant = NearestWord.Of(entry.Key, unset);
                missing.RemoveAll(m => m.Key == meant);
                var place = new Place(reading!.File, entry.KeyLine, entry.KeyColumn);
                if (LookAlike.In(entry.Key) is { } alike && LookAlike.Replace(entry.Key).Trim('"', '\'', ' ') is var plain && (unset.Contains(plain) || Find(plain) is not null))
                {
                    missing.RemoveAll(m => m.Key == plain);
                    reading.Problems.Add("look-alike", place with { Column = place.Column + alike.Index }, alike.Message, $"Write '{plain}: …'.");
                    continue;
                }

                reading.Problems.Add(
                    "unknown-key",
                    place,
                    $"'{(entry.Key.Length > 60 ? entry.Key[..60] + "…" : entry.Key)}' is not a field of {what}.",
                    NearestWord.Advice(entry.Key, unset));
            }
        }

        foreach (var (key, words) in missing)
        {
            reading!.Report(map, "missing-field", $"'{key}' is missing from {what}.", $"Add '{key}: …' ({words}).");
        }
    }

    private bool TryGet<T>(string key, Shape<T> shape, string meaning, [MaybeNullWhen(false)] out T value)
    {
        Note(key, shape, meaning, required: false);
        value = default;
        return map is not null && reading is not null && Find(key) is { } entry && shape.TryRead(entry.Value, reading, out value);
    }

    // What a field looks like is asked for without a file only; a book of ten seasons has millions of fields.
    private void Note<T>(string key, Shape<T> shape, string meaning, bool required)
    {
        if (map is null)
        {
            described.Add(new FieldDescription(key, meaning, shape.Words, required, shape.Schema));
        }
        else
        {
            known.Add(key);
        }
    }

    private MapEntry? Find(string key)
    {
        foreach (var entry in map!.Entries)
        {
            if (entry.Key == key)
            {
                return entry;
            }
        }

        return null;
    }
}
