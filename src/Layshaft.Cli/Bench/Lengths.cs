using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>Reads lengths of the command line.</summary>
internal static class Lengths
{
    private const string AnyLength = "Write a length such as 0.10 mm.";

    /// <summary>One length above 0.</summary>
    public static Parsed<Length> One(string text, string option)
    {
        var parsed = UnitWords.Length.Parse(text);
        return parsed.Wrong is { } wrong ? Parsed.Bad<Length>($"{option}: {wrong}", parsed.Remedy ?? AnyLength)
            : parsed.Value <= Length.Zero ? Parsed.Bad<Length>($"{option}: '{text}' is not more than 0.", AnyLength)
            : parsed;
    }

    /// <summary>Some lengths, with commas between them, none beyond so many millimetres.</summary>
    public static Parsed<IReadOnlyList<Length>> List(string? text, string option, string example, double most)
    {
        string[] items = [.. (text ?? string.Empty).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
        if (items.Length == 0)
        {
            return Parsed.Bad<IReadOnlyList<Length>>($"{option} is missing.", $"Write {option} \"{example}\".");
        }

        for (var i = 1; i < items.Length; i++)
        {
            // "0,50 mm" is a number with a comma, not a list: nothing stands before the unit but digits.
            if (items[i - 1].All(char.IsAsciiDigit) && char.IsAsciiDigit(items[i][0]) && text!.Contains($"{items[i - 1]},{items[i]}", StringComparison.Ordinal))
            {
                return Parsed.Bad<IReadOnlyList<Length>>($"{option}: in a list, the comma in '{items[i - 1]},{items[i]}' separates two items.", $"Write {items[i - 1]}.{items[i]}.");
            }
        }

        var lengths = items.Select(i => (Text: i, Read: UnitWords.Length.Parse(i))).ToArray();
        var bad = Array.Find(lengths, l => l.Read.Wrong is not null);
        return bad.Text is not null
            ? Parsed.Bad<IReadOnlyList<Length>>($"{option}: {bad.Read.Wrong}", bad.Read.Remedy ?? AnyLength)
            : Array.Find(lengths, l => Math.Abs(l.Read.Value.Millimeters) > most) is { Text: { } far } ? Parsed.Bad<IReadOnlyList<Length>>($"{option}: '{far}' is out of range.", FormattableString.Invariant($"Write a length up to {most} mm."))
            : Parsed.Good<IReadOnlyList<Length>>([.. lengths.Select(l => l.Read.Value)]);
    }
}

/// <summary>Bands of lengths with two ends.</summary>
internal static class Bands
{
    public static Parsed<Engineering.Settings.TargetBand> Of(Band<IQuantity> band, string what) => band is { Low: Length low, High: Length high }
        ? Parsed.Good(new Engineering.Settings.TargetBand(low, high))
        : Parsed.Bad<Engineering.Settings.TargetBand>($"{what} needs two lengths.", "Write a band such as 0.05 to 0.10 mm.");
}
