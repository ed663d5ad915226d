using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>The completed steps of a list: their ids, or all of them with their number.</summary>
/// <param name="Ids">The ids; empty if all are meant.</param>
/// <param name="All">How many steps the technician ticked; null if they are listed.</param>
public sealed partial record DoneSteps(IReadOnlyList<string> Ids, int? All)
{
    /// <summary>No step.</summary>
    public static DoneSteps None { get; } = new([], null);

    /// <summary>How they are written.</summary>
    public static Shape<DoneSteps> Shape { get; } = new StepsShape();

    // With their number, so that a step that is added to the list later is not ticked in an old job.
    [GeneratedRegex("^all [1-9][0-9]{0,2}\\z")]
    private static partial Regex AllPattern();

    private sealed class StepsShape : Shape<DoneSteps>
    {
        private static readonly ListShape<string> Ids = new(Scalars.Id.Like("drain"));

        public override string Words => $"'all' with the number of steps, or {Ids.Words}";

        public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out DoneSteps value)
        {
            value = null;
            if (node is not ScalarNode { IsNothing: false } word)
            {
                value = Ids.TryRead(node, reading, out var ids) ? new DoneSteps(ids, null) : null;
            }
            else if (AllPattern().IsMatch(word.Text))
            {
                value = new DoneSteps([], int.Parse(word.Text.AsSpan(4), CultureInfo.InvariantCulture));
            }
            else
            {
                reading.Report(node, "wrong-kind", $"{word.Words} is not a list of steps.", "Write [drain, halves], or all with the number of completed steps, such as all 12.");
            }

            return value is not null;
        }

        public override JsonObject Schema()
        {
            var schema = Ids.Schema();
            schema["type"] = new JsonArray("array", "string");
            schema["pattern"] = "^all [1-9][0-9]{0,2}$";
            return schema;
        }
    }
}
