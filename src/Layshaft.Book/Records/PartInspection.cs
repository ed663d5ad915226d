using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Shapes;
using Layshaft.Book.Yaml;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>A finding in its short form: the readings of a part, or the technician's grade of a part that is not measured.</summary>
/// <param name="Grade">The grade; null if there are readings or nothing yet.</param>
/// <param name="Readings">Readings of a part with a single measure; empty if they are under the names of measures or not taken.</param>
/// <param name="Measures">Readings of each measure; a measure without readings was not taken.</param>
public sealed record PartInspection(Grade? Grade, IReadOnlyList<IQuantity> Readings, IReadOnlyList<Named<IReadOnlyList<IQuantity>>> Measures)
{
    /// <summary>How the inspection of a job is written.</summary>
    public static NamedShape<PartInspection> Shape { get; } = new("lines of part and readings, or part and grade", new PartShape());

    private sealed class PartShape : Shape<PartInspection>
    {
        private static readonly ReadingsOrNone Readings = new();
        private static readonly NamedShape<IReadOnlyList<IQuantity>> Measures = new("measures with their readings", Readings);

        public override string Words => $"{Quantities.Reading.Words}, a list, measures with their readings, or {Finding.GradeShape.Words}";

        public override bool TryRead(Node node, Shapes.Reading reading, [MaybeNullWhen(false)] out PartInspection value)
        {
            value = null;
            switch (node)
            {
                case MapNode:
                    value = Measures.TryRead(node, reading, out var measures) ? new PartInspection(null, [], measures) : null;
                    break;
                case ScalarNode { IsNothing: false, Text: [var first, ..] } when char.IsLetter(first):
                    value = Finding.GradeShape.TryRead(node, reading, out var grade) ? new PartInspection(grade, [], []) : null;
                    break;
                default:
                    value = Readings.TryRead(node, reading, out var readings) ? new PartInspection(null, readings, []) : null;
                    break;
            }

            return value is not null;
        }

        public override JsonObject Schema()
        {
            var schema = Readings.Schema();
            schema["type"]!.AsArray().Add("object");
            schema["additionalProperties"] = Readings.Schema();
            schema["pattern"] = $"^(?:reuse|watch|renew)$|{schema["pattern"]}";
            return schema;
        }
    }
}
