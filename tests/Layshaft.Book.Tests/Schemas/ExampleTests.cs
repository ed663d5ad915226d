using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Layshaft.Book.Schemas;

namespace Layshaft.Book.Tests.Schemas;

/// <summary>The example that a field is described with can be written in that field.</summary>
public partial class ExampleTests
{
    [Fact]
    public void Every_example_fits_its_own_field()
    {
        var examples = BookSchema.All.SelectMany(s => FieldsOf(JsonNode.Parse(s.Text())!)).ToList();

        Assert.True(examples.Count > 80, $"Only {examples.Count} examples were found.");
        Assert.All(examples, e => Assert.True(Fits(e.Field, e.Example), $"{e.Key}: '{e.Example}' does not fit."));
    }

    [Theory]
    [InlineData("car", "wheelbase", "2.55 m")]
    [InlineData("venue", "length", "3.2 km")]
    [InlineData("venue", "altitude", "120 m")]
    [InlineData("gearbox", "thickness", "0.12 mm")]
    [InlineData("job", "hours", "6.5")]
    public void A_field_has_an_example_of_its_own_size(string kind, string key, string example) =>
        Assert.Contains((key, example), FieldsOf(JsonNode.Parse(BookSchema.All.Single(s => s.Kind == kind).Text())!).Select(f => (f.Key, f.Example)));

    private static IEnumerable<(string Key, JsonNode Field, string Example)> FieldsOf(JsonNode node)
    {
        foreach (var child in Children(node))
        {
            if (child.Key == "properties")
            {
                foreach (var (key, field) in child.Value.AsObject())
                {
                    if (Example().Match(field!["description"]?.GetValue<string>() ?? string.Empty) is { Success: true } match)
                    {
                        yield return (key, field["items"] ?? field, match.Groups[1].Value.Trim('"'));
                    }
                }
            }

            foreach (var inner in FieldsOf(child.Value))
            {
                yield return inner;
            }
        }
    }

    private static IEnumerable<(string Key, JsonNode Value)> Children(JsonNode node) => node switch
    {
        JsonObject map => map.Where(p => p.Value is JsonObject or JsonArray).Select(p => (p.Key, p.Value!)),
        JsonArray list => list.Where(i => i is JsonObject or JsonArray).Select(i => (string.Empty, i!)),
        _ => [],
    };

    // A band is described with several examples.
    private static bool Fits(JsonNode field, string example) => field["enum"] is JsonArray words
        ? words.Any(w => w!.ToString() == example)
        : Several().Split(example).All(e => Regex.IsMatch(e, field["pattern"]!.GetValue<string>()));

    [GeneratedRegex(@" Write .*?, such as (.+?)[.](?: Units: .*)?\z")]
    private static partial Regex Example();

    [GeneratedRegex(", (?:or )?")]
    private static partial Regex Several();
}
