using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
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
            reading.Report(node, "wrong-kind", $"Here stands {node.Words}, but {Words} is expected.", "Begin each item with '- ' on a line of its own, or write [a, b].");
            return false;
        }

        if (list.Items.Count > atMost || list.Items.Count < atLeast)
        {
            reading.Report(node, "list-length", $"This list has {list.Items.Count} items; {(list.Items.Count > atMost ? $"at most {atMost}" : $"at least {atLeast}")} are expected.");
            return false;
        }

        var items = new T[list.Items.Count];
        var good = 0;
        foreach (var child in list.Items)
        {
            if (item.TryRead(child, reading, out var read))
            {
                items[good++] = read;
            }
        }

        value = Kept(good == items.Length ? items : items[..good]);
        return good >= atLeast && (!whole || good == list.Items.Count);
    }

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
