using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Book.Problems;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>Reads a number with its unit.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="name">The quantity's name with its article: "a length".</param>
/// <param name="example">How it is written: "0.12 mm".</param>
/// <param name="units">The units that are known, the usual one first.</param>
public sealed class QuantityText<T>(string name, string example, params UnitWord<T>[] units)
{
    /// <summary>"a length with its unit".</summary>
    public string What => $"{name} with its unit";

    /// <summary>How it is written.</summary>
    public string Example => example;

    /// <summary>The units that are known.</summary>
    public IReadOnlyList<UnitWord<T>> Units => units;

    /// <summary>The spellings that are known.</summary>
    public IReadOnlyList<string> UnitWords => [.. units.Select(u => u.Word)];

    /// <summary>Reads <c>0.12 mm</c> or <c>0.12mm</c>.</summary>
    public Parsed<T> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (QuantityParts.Fraction().Match(text) is { Success: true } fraction && Knows(fraction.Groups["unit"].Value) && Value(fraction) is { } value)
        {
            return Parsed.Bad<T>($"'{text.Trim()}' is a fraction.", string.Create(CultureInfo.InvariantCulture, $"Write {value:0.######} {fraction.Groups["unit"].Value}."));
        }

        var (number, unit) = QuantityParts.Split(text);
        return unit.Length == 0 ? Unitless(number, text) : Make(number, unit);
    }

    /// <summary>Reads a number in a unit that is known from elsewhere, as the first half of "0.05 to 0.10 mm" is.</summary>
    public Parsed<T> Make(string number, string unit)
    {
        ArgumentNullException.ThrowIfNull(number);
        ArgumentNullException.ThrowIfNull(unit);
        var word = units.FirstOrDefault(u => u.Word == unit);
        if (word is null)
        {
            var shown = unit.Length > 30 ? unit[..30] + "…" : unit;
            return number.Length == 0
                ? Parsed.Bad<T>($"'{shown}' is not {name}.")
                : Parsed.Bad<T>($"'{shown}' is not a unit for {name}.", NearestUnit(unit));
        }

        var figure = Figure.Parse(number);
        return figure.Wrong is { } wrong
            ? Parsed.Bad<T>(wrong, Figure.WithoutComma(number, $" {unit}") ?? (figure.Remedy is { } remedy ? $"{remedy.TrimEnd('.')} {unit}." : null))
            : Parsed.Good(word.Make(figure.Value));
    }

    /// <summary>Whether this is a spelling of one of the units.</summary>
    public bool Knows(string unit) => units.Any(u => u.Word == unit);

    private Parsed<T> Unitless(string number, string text)
    {
        var figure = Figure.Parse(number);
        return figure.Wrong is null
            ? Parsed.Bad<T>($"'{text}' has no unit.", $"Write {string.Join(" or ", units.Take(2).Select(u => $"{number} {u.Word}"))}.")
            : Parsed.Bad<T>(figure.Wrong);
    }

    private static decimal? Value(Match fraction)
    {
        var (whole, over, under) = (fraction.Groups["whole"].Value, int.Parse(fraction.Groups["over"].Value, CultureInfo.InvariantCulture), int.Parse(fraction.Groups["under"].Value, CultureInfo.InvariantCulture));
        return under == 0 ? null : (whole.Length == 0 ? 0 : int.Parse(whole, CultureInfo.InvariantCulture)) + ((decimal)over / under);
    }

    private string NearestUnit(string unit)
    {
        // A word that could be a unit of several quantities is not guessed.
        if (units.Select(u => u.Make(1)?.GetType()).Distinct().Count() > 1)
        {
            var near = units.GroupBy(u => u.Make(1)?.GetType()).Select(g => NearestWord.Of(unit, g.Select(u => u.Word))).OfType<string>().ToArray();
            return near.Length == 1 ? $"Did you mean '{near[0]}'?" : $"Write {Example}, or another unit such as N·m or °.";
        }

        var sameLetters = units.FirstOrDefault(u => string.Equals(u.Word, unit, StringComparison.OrdinalIgnoreCase))?.Word;
        return sameLetters is not null ? $"Did you mean '{sameLetters}'?" : NearestWord.Advice(unit, [.. units.Select(u => u.Word)]);
    }
}
