using System.Text.Json.Nodes;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests.Schemas;

/// <summary>A file of the small book with one value changed: left out, renamed, emptied, or made another kind of thing.</summary>
internal sealed record ChangedTree(string Kind, string What, Node Root)
{
    private static readonly Dictionary<string, Action<Node, Shapes.Reading>> Readers = new(StringComparer.Ordinal)
    {
        ["shop"] = Read(Shop.Shape),
        ["customer"] = Read(Customer.Shape),
        ["gearbox"] = Read(Gearbox.Shape),
        ["car"] = Read(Car.Shape),
        ["venue"] = Read(Venue.Shape),
        ["unit"] = Read(Unit.Shape),
        ["job"] = Read(Job.Shape),
    };

    public static IReadOnlyList<ChangedTree> All { get; } =
    [
        .. SchemaFile.All.Where(f => f.Book == "Small").SelectMany(f => Changes(NodeReader.Read(f.Path, f.Text, new ProblemList())!, f.Path)
            .Select(c => new ChangedTree(f.Schema.Kind, c.What, c.Node))),
    ];

    /// <summary>Whether the reader takes it.</summary>
    public bool Reads()
    {
        var problems = new ProblemList();
        Readers[Kind](Root, new Shapes.Reading("a.yaml", problems));
        return problems.Count == 0;
    }

    public JsonNode? Json() => Json(Root);

    private static Action<Node, Shapes.Reading> Read<T>(RecordShape<T> shape) => (node, reading) => shape.ReadWhatIsThere(node, reading);

    private static JsonNode? Json(Node node) => node switch
    {
        MapNode map => new JsonObject(map.Entries.Select(e => KeyValuePair.Create(e.Key, Json(e.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Json)]),
        ScalarNode { IsNothing: true } => null,
        ScalarNode scalar => scalar.Text,
        _ => throw new InvalidOperationException(),
    };

    private static IEnumerable<(string What, Node Node)> Changes(Node node, string at)
    {
        yield return ($"{at} nothing", new ScalarNode(string.Empty, true, 1, 1));
        yield return ($"{at} nonsense", new ScalarNode("!?", false, 1, 1));
        yield return ($"{at} empty list", new ListNode([], 1, 1));
        yield return ($"{at} empty map", new MapNode([], 1, 1));
        yield return ($"{at} in a list", new ListNode([node], 1, 1));
        switch (node)
        {
            case MapNode map:
                for (var i = 0; i < map.Entries.Count; i++)
                {
                    var entry = map.Entries[i];
                    yield return ($"{at}.{entry.Key} left out", map with { Entries = [.. map.Entries.Where(e => e != entry)] });
                    yield return ($"{at}.{entry.Key} renamed", map with { Entries = [.. map.Entries.Select(e => e == entry ? e with { Key = e.Key + "x" } : e)] });
                    foreach (var (what, changed) in Changes(entry.Value, $"{at}.{entry.Key}"))
                    {
                        yield return (what, map with { Entries = [.. map.Entries.Select(e => e == entry ? e with { Value = changed } : e)] });
                    }
                }

                break;
            case ListNode list:
                for (var i = 0; i < list.Items.Count; i++)
                {
                    var index = i;
                    foreach (var (what, changed) in Changes(list.Items[i], $"{at}[{i}]"))
                    {
                        yield return (what, list with { Items = [.. list.Items.Select((item, n) => n == index ? changed : item)] });
                    }
                }

                break;
        }
    }
}
