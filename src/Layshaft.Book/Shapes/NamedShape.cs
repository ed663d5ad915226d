using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Places;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>A value under a short name that other files give, such as the readings of a part.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="Place">Where the name is.</param>
/// <param name="Name">The short name.</param>
/// <param name="Value">The value.</param>
public sealed record Named<T>(Place Place, string Name, T Value);

/// <summary>Lines of 'short name: value', each value of one shape. A bad value is reported and left out; the others are kept.</summary>
/// <typeparam name="T">One value.</typeparam>
/// <param name="what">What it is, with its example.</param>
/// <param name="value">The shape of each value.</param>
public sealed class NamedShape<T>(string what, Shape<T> value) : Shape<IReadOnlyList<Named<T>>>
{
    private const int AtMost = 2000;

    /// <inheritdoc/>
    public override string Words => what;

    /// <inheritdoc/>
    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out IReadOnlyList<Named<T>> values)
    {
        values = null;
        if (node is not MapNode { Entries.Count: <= AtMost } map)
        {
            reading.Report(node, "wrong-kind", $"Expected {what}, found {node.Words}.", "Write 'name: value' lines.");
            return false;
        }

        var read = new List<Named<T>>(map.Entries.Count);
        foreach (var entry in map.Entries)
        {
            if (value.TryRead(entry.Value, reading, out var one))
            {
                read.Add(new Named<T>(new Place(reading.File, entry.KeyLine, entry.KeyColumn), entry.Key, one));
            }
        }

        values = read;
        return read.Count == map.Entries.Count;
    }

    /// <inheritdoc/>
    public override JsonObject Schema() => new() { ["type"] = "object", ["maxProperties"] = AtMost, ["additionalProperties"] = value.Schema() };
}
