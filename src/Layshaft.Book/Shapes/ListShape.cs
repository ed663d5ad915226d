using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Problems;
using Layshaft.Book.Values;
using Layshaft.Book.Yaml;
using UnitsNet;

namespace Layshaft.Book.Shapes;

/// <summary>A list of values of one shape. A bad item is reported and left out; the others are kept.</summary>
/// <typeparam name="T">One item.</typeparam>
/// <param name="item">The shape of each item.</param>
/// <param name="atLeast">Fewest items, good ones counted.</param>
/// <param name="atMost">Most items.</param>
/// <param name="whole">Whether the list is of no use without each of its items, as the gears of a set are.</param>
public sealed class ListShape<T>(Shape<T> item, int atLeast = 0, int atMost = 2000, bool whole = false) : Shape<IReadOnlyList<T>>
{
    /// <inheritdoc/>
    public override string Words => $"a list, each item {item.Words}";

    /// <inheritdoc/>
    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = null;
        if (node is not ListNode list)
        {
            reading.Report(node, "wrong-kind", $"Expected {Words}, found {node.Words}.", "Write each item on its own line after '- ', or write [a, b].");
            return false;
        }

        if (list.Items.Count > atMost || list.Items.Count < atLeast)
        {
            reading.Report(node, "list-length", $"Expected {(list.Items.Count > atMost ? $"at most {atMost}" : $"at least {atLeast}")} items in this list, found {list.Items.Count}.");
            return false;
        }

        var items = new T[list.Items.Count];
        var good = 0;
        for (var i = 0; i < list.Items.Count; i++)
        {
            if (SplitByComma(list.Items, i) is { } meant && (typeof(T) == typeof(UnitsNet.IQuantity) || !item.TryRead(list.Items[i], reading with { Problems = new ProblemList() }, out _)))
            {
                reading.Report(list.Items[i], "comma-in-list", $"In a list, the comma in '{meant}' separates two items.", $"Write {meant.Replace(',', '.')}{(item.TryRead(list.Items[i], reading with { Problems = new ProblemList() }, out _) && char.IsAsciiDigit(meant[^1]) ? $", or {meant.Replace(",", ", ", StringComparison.Ordinal)} for two readings" : "")}.");
                i++;
            }
            else if (item.TryRead(list.Items[i], reading, out var read))
            {
                items[good++] = read;
                if (read is string && SplitText(list.Items, i) is { } text)
                {
                    reading.Problems.Note("comma-in-list", reading.At(list.Items[i]), $"In brackets a comma begins a new item: '{text}'.", "Put a text that has a comma in quotes.");
                }
            }
            else if (list.Items[i] is MapNode map && map.Entries.FirstOrDefault(e => e.Key == "id")?.Value is ScalarNode id)
            {
                reading.Problems.Lose(reading.File, id.Text);
            }
        }

        value = Kept(good == items.Length ? items : items[..good]);
        return good >= atLeast && (!whole || good == list.Items.Count);
    }

    // "[0,78 mm]" is two items to YAML: digits, and right behind their comma more of them.
    private static string? SplitByComma(IReadOnlyList<Node> items, int i) =>
        i + 1 < items.Count
        && items[i] is ScalarNode { Plain: true, Text.Length: > 0 } first && first.Text.All(char.IsAsciiDigit)
        && items[i + 1] is ScalarNode { Plain: true } second && second.Text is [>= '0' and <= '9', ..]
        && second.Line == first.Line && second.Column == first.Column + first.Text.Length + 1
            ? $"{first.Text},{second.Text}"
            : null;

    // "[Check the level, and look again]" is two items to YAML; a new sentence would begin with a capital.
    private static string? SplitText(IReadOnlyList<Node> items, int i) =>
        typeof(T) == typeof(string) && i > 0
        && items[i] is ScalarNode { Plain: true, Text: [var small, ..] } second && items[i - 1] is ScalarNode { Plain: true, Text: [var capital, ..] } first
        && first.Line == second.Line && first.Text.Contains(' ', StringComparison.Ordinal) && char.IsLower(small) && char.IsUpper(capital)
            ? second.Shown
            : null;

    private static IReadOnlyList<T> Kept(T[] items) => items is IQuantity[] values ? (IReadOnlyList<T>)ValueList.Of(values) : items;

    /// <inheritdoc/>
    public override JsonObject Schema()
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Schema(), ["maxItems"] = atMost };
        if (atLeast > 0)
        {
            schema["minItems"] = atLeast;
        }

        return schema;
    }
}
