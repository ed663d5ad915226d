using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>One value, or a list of them.</summary>
/// <typeparam name="T">One value.</typeparam>
/// <param name="item">The shape of each.</param>
/// <param name="atMost">Most items.</param>
public sealed class OneOrMoreShape<T>(Shape<T> item, int atMost) : Shape<IReadOnlyList<T>>
{
    private readonly ListShape<T> list = new(item, atLeast: 1, atMost);

    /// <inheritdoc/>
    public override string Words => item.Words.Contains(", such as ", StringComparison.Ordinal) ? $"one or a list, each {item.Words}" : $"{item.Words}, or a list";

    /// <inheritdoc/>
    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        if (node is ListNode)
        {
            return list.TryRead(node, reading, out value);
        }

        var read = item.TryRead(node, reading, out var one);
        value = read ? [one!] : null;
        return read;
    }

    /// <inheritdoc/>
    // Keywords for lists hold for lists only and those for texts for texts only, so one schema can speak of both.
    public override JsonObject Schema()
    {
        var schema = item.Schema();
        var kinds = schema["type"] is JsonArray several ? several.Select(k => k!.GetValue<string>()) : [schema["type"]!.GetValue<string>()];
        schema["type"] = new JsonArray([.. kinds.Append("array").Select(k => (JsonNode)k)]);
        schema["items"] = item.Schema();
        schema["minItems"] = 1;
        schema["maxItems"] = atMost;
        return schema;
    }
}
