using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Problems;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What the words stand for.</typeparam>
public sealed class ChoiceShape<T>(string what, params (string Word, T Value)[] choices) : Shape<T>
{
    private readonly string[] known = WordsOf(choices);

    /// <inheritdoc/>
    public override string Words => $"{what} ({string.Join(", ", known)})";

    /// <inheritdoc/>
    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node is not ScalarNode scalar || scalar.IsNothing)
        {
            reading.Report(node, "wrong-kind", $"Expected {what}, found {node.Words}.", $"Write one of: {string.Join(", ", known)}.");
            return false;
        }

        foreach (var choice in choices)
        {
            if (choice.Word == scalar.Text)
            {
                value = choice.Value!;
                return true;
            }
        }

        if (LookAlike.In(scalar.Text) is { } alike && LookAlike.Replace(scalar.Text).Trim('"', '\'', ' ') is var plain && Array.IndexOf(known, plain) >= 0)
        {
            reading.Report(node, "look-alike", alike.Message, $"Write {plain}.");
            return false;
        }

        reading.Report(node, "unknown-word", $"{scalar.Words} is not {what}.", NearestWord.Advice(scalar.Text, known));
        return false;
    }

    /// <inheritdoc/>
    public override JsonObject Schema() => SchemaParts.OneOf(known);

    /// <summary>The word for a value.</summary>
    /// <exception cref="ArgumentException">The value has no word.</exception>
    public string WordOf(T value)
    {
        foreach (var choice in choices)
        {
            if (EqualityComparer<T>.Default.Equals(choice.Value, value))
            {
                return choice.Word;
            }
        }

        throw new ArgumentException($"{value} has no word here", nameof(value));
    }

    // A loop, since LINQ over pairs is compiled anew at start-up for each kind of choice.
    private static string[] WordsOf((string Word, T Value)[] choices)
    {
        var words = new string[choices.Length];
        for (var i = 0; i < words.Length; i++)
        {
            words[i] = choices[i].Word;
        }

        return words;
    }
}
