using System.Text.Json.Nodes;

namespace Layshaft.Book.Shapes;

/// <summary>
/// Pieces of JSON Schema for single values. Editors read YAML before they check it: an unquoted <c>27</c> is a number to
/// them and <c>yes</c> may be a truth value, while the reader takes the text in either case. Keywords for numbers hold for
/// numbers only and patterns for texts only, so one schema can speak of both.
/// </summary>
internal static class SchemaParts
{
    /// <summary>A text that matches a pattern (ECMA 262); an unquoted number is none.</summary>
    public static JsonObject Matching(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };

    /// <summary>Any text, unquoted numbers and truth values with it; not blank, not longer than this.</summary>
    public static JsonObject AnyText(int longest) => new()
    {
        ["type"] = new JsonArray("string", "number", "boolean"),
        ["pattern"] = @"\S",
        ["maxLength"] = longest,
    };

    /// <summary>A short name; one that is all digits may stand without quotes.</summary>
    public static JsonObject Name(string pattern) => new()
    {
        ["type"] = new JsonArray("string", "integer"),
        ["pattern"] = pattern,
        ["minimum"] = 0,
    };

    /// <summary>A whole number, or the same in quotes.</summary>
    public static JsonObject Whole(int least, int most) => new()
    {
        ["type"] = new JsonArray("integer", "string"),
        ["minimum"] = least,
        ["maximum"] = most,
        ["pattern"] = least == 0 ? $"^(?:[+]?{Patterns.Whole(least, most)}|[-−]0)$" : $"^[+]?{Patterns.Whole(least, most)}$",
    };

    /// <summary>A number, or the same in quotes.</summary>
    public static JsonObject Number(Sign sign)
    {
        var schema = new JsonObject { ["type"] = new JsonArray("number", "string"), ["pattern"] = $"^{Patterns.Number(sign)}$" };
        if (sign != Sign.Any)
        {
            schema[sign == Sign.Positive ? "exclusiveMinimum" : "minimum"] = 0;
        }

        return schema;
    }

    /// <summary>One of these words.</summary>
    // An unquoted yes is a truth value to some editors; both readings are let through there and settled by the reader.
    public static JsonObject OneOf(IReadOnlyCollection<string> words) => new()
    {
        ["enum"] = new JsonArray([.. words.Select(w => (JsonNode)w), .. words.Where(w => w is "yes" or "no").Select(w => JsonValue.Create(w == "yes"))]),
    };
}
