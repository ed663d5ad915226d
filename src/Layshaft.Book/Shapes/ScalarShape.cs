using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>A shape for a single value, read from its text.</summary>
/// <typeparam name="T">What reading gives.</typeparam>
/// <param name="what">What to write, with its article: "a length with its unit".</param>
/// <param name="example">How it is written: "0.12 mm"; empty if there is no need of one.</param>
/// <param name="code">The problem's code when the text does not fit.</param>
/// <param name="parse">Reads the text: the value, or what is wrong with it.</param>
/// <param name="schema">Makes the value's JSON Schema.</param>
/// <param name="free">Whether it is free text, in which a '#' may be meant as it is written.</param>
public sealed class ScalarShape<T>(string what, string example, string code, Func<string, Parsed<T>> parse, Func<JsonObject> schema, bool free = false) : Shape<T>
{
    /// <inheritdoc/>
    public override string Words => example.Length == 0 ? what : $"{what}, such as {example}";

    /// <inheritdoc/>
    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node is not ScalarNode scalar)
        {
            reading.Report(node, "wrong-kind", $"Expected {Words}, found {node.Words}.");
            return false;
        }

        if (scalar.IsNothing)
        {
            reading.Report(node, "nothing-written", scalar.NothingWritten, $"Write {Words}, or remove the line.");
            return false;
        }

        var parsed = parse(scalar.Text);
        if (parsed.Wrong is { } wrong)
        {
            if (LookAlike.In(scalar.Text) is { } alike && LookAlike.Replace(scalar.Text).Trim('"', '\'', ' ') is var plain && parse(plain).Wrong is null)
            {
                reading.Report(node, "look-alike", alike.Message, $"Write {(plain[0] == '#' ? $"\"{plain}\"" : Short(plain))}.");
                return false;
            }

            reading.Report(node, code, Short(wrong), Short(parsed.Remedy ?? $"Write {Words}."));
            return false;
        }

        if (free && scalar.Cut)
        {
            reading.Problems.Note("hash-in-text", reading.At(node), $"The '#' in this text begins a comment, so only {scalar.Words} is read.", "Put the text in quotes if the '#' is part of it; otherwise write two spaces before the '#'.");
        }

        value = parsed.Value!;
        return true;
    }

    // Most messages quote what was written, which may be as long as a file.
    private static string Short(string message) => message.Length > 250 ? message[..250] + "…" : message;

    /// <inheritdoc/>
    public override Shape<T> Like(string example) => new ScalarShape<T>(what, example, code, parse, schema, free);

    /// <inheritdoc/>
    public override JsonObject Schema() => schema();
}

/// <summary>What came of reading a text: a value, or what is wrong with it.</summary>
/// <typeparam name="T">What reading gives.</typeparam>
/// <param name="Value">The value; meaningless when <paramref name="Wrong"/> is set.</param>
/// <param name="Wrong">What is wrong; null when the value is good.</param>
/// <param name="Remedy">What to write instead; null for the shape's own words.</param>
public readonly record struct Parsed<T>(T? Value, string? Wrong, string? Remedy);

/// <summary>Makes results of reading.</summary>
public static class Parsed
{
    /// <summary>A good value.</summary>
    public static Parsed<T> Good<T>(T value) => new(value, null, null);

    /// <summary>A text that does not fit.</summary>
    public static Parsed<T> Bad<T>(string wrong, string? remedy = null) => new(default, wrong, remedy);
}
