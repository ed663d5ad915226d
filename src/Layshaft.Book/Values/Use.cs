using System.Globalization;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>The unit in which usage is counted.</summary>
public enum UseUnit
{
    /// <summary>Hours in use.</summary>
    Hours,

    /// <summary>Kilometres.</summary>
    Kilometres,

    /// <summary>Events (race meetings, hill-climb weekends).</summary>
    Events,
}

/// <summary>The usage of a unit or a part.</summary>
/// <param name="Amount">Not negative.</param>
/// <param name="Unit">What it is counted in.</param>
public readonly record struct Use(decimal Amount, UseUnit Unit)
{
    // The international mile: NIST SP 811, appendix B.6.
    private const decimal KilometresInMile = 1.609344m;

    /// <summary>Reads "21.5 h", "1240 km" or "6 events".</summary>
    public static Parsed<Use> Parse(string text)
    {
        var (number, unit) = QuantityParts.Split(text);
        UseUnit? counted = unit switch
        {
            "h" or "hours" or "hour" => UseUnit.Hours,
            "km" => UseUnit.Kilometres,
            "events" or "event" => UseUnit.Events,
            _ => null,
        };
        if (counted is null)
        {
            return Parsed.Bad<Use>(
                unit.Length == 0 ? $"'{text}' has no unit." : $"'{text}' is not a usage.",
                unit is "mi" or "mile" or "miles" && Figure.ParseExact(number) is { Wrong: null, Value: >= 0 and < 10_000_000 and var miles } ? string.Create(CultureInfo.InvariantCulture, $"Usage in distance is in km: write {decimal.Round(miles * KilometresInMile)} km.") : null);
        }

        var figure = Figure.ParseExact(number);
        return figure.Wrong is not null
            ? Parsed.Bad<Use>(figure.Wrong, Figure.WithoutComma(number, $" {unit}") ?? (figure.Remedy is { } remedy ? $"{remedy.TrimEnd('.')} {unit}." : null))
            : figure.Value < 0
                ? Parsed.Bad<Use>($"'{text}' is negative.", "Write a usage of 0 or more.")
                : Parsed.Good(new Use(figure.Value, counted.Value));
    }

    /// <summary>As written in a book: "21.5 h".</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Amount} {Unit switch { UseUnit.Hours => "h", UseUnit.Kilometres => "km", _ => "events" }}");
}
