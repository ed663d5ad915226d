using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Records;
using Layshaft.Book.Yaml;
using UnitsNet;

namespace Layshaft.Book.Shapes;

/// <summary>One reading, several, or none: empty brackets are a value that is still to be measured.</summary>
/// <param name="example">How one is written.</param>
internal sealed class ReadingsOrNone(string example = "0.12 mm") : Shape<IReadOnlyList<IQuantity>>
{
    private readonly OneOrMoreShape<IQuantity> some = new(Quantities.Reading.Like(example), Measurement.MostReadings);

    public override string Words => some.Words;

    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out IReadOnlyList<IQuantity> value)
    {
        value = [];
        return node is ListNode { Items.Count: 0 } or ScalarNode { IsNothing: true, Cut: false } || some.TryRead(node, reading, out value);
    }

    public override JsonObject Schema()
    {
        var schema = some.Schema();
        schema["minItems"] = 0;
        schema["type"]!.AsArray().Add("null");
        return schema;
    }
}
