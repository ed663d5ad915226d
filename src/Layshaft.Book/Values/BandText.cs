using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>Reads a target band of a measured value.</summary>
public static partial class BandText
{
    /// <summary>What to write.</summary>
    public const string What = "a band";

    /// <summary>How it is written.</summary>
    public const string Examples = "0.05 mm to 0.10 mm, at most 0.05 mm, or at least 20 N·m";

    /// <summary>
    /// Reads "0.05 mm to 0.10 mm", "0.05 to 0.10 mm", "at most 0.05 mm" or "at least 20 N·m". Both ends must be of
    /// one kind, the lower first.
    /// </summary>
    public static Parsed<Band<IQuantity>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var trimmed = text.Trim();
        if (After(trimmed, "at most ") is { } most)
        {
            return One(most, high: true);
        }

        if (After(trimmed, "at least ") is { } least)
        {
            return One(least, high: false);
        }

        var parts = trimmed.Replace('–', '|').Replace(" to ", "|", StringComparison.Ordinal).Split('|');
        if (parts.Length != 2)
        {
            return Parsed.Bad<Band<IQuantity>>($"'{trimmed}' is not a band.", Meant(trimmed));
        }

        var high = UnitWords.Measured.Parse(parts[1]);
        var (number, unit) = QuantityParts.Split(parts[0]);
        var low = unit.Length == 0
            ? UnitWords.Measured.Make(number, QuantityParts.Split(parts[1]).Unit)
            : UnitWords.Measured.Parse(parts[0]);
        if ((low.Wrong ?? high.Wrong) is { } wrong)
        {
            return Parsed.Bad<Band<IQuantity>>(wrong, low.Wrong is null ? high.Remedy : low.Remedy);
        }

        if (!low.Value!.IsLike(high.Value!))
        {
            return Parsed.Bad<Band<IQuantity>>("The two ends of the band are different quantities.");
        }

        return low.Value!.InSi() > high.Value!.InSi()
            ? Parsed.Bad<Band<IQuantity>>($"The first value of the band '{trimmed}' is above the second.", "Write the smaller value first.")
            : Parsed.Good(new Band<IQuantity>(low.Value, high.Value));
    }

    private static Parsed<Band<IQuantity>> One(string text, bool high)
    {
        var end = UnitWords.Measured.Parse(text);
        return end.Wrong is not null
            ? Parsed.Bad<Band<IQuantity>>(end.Wrong, end.Remedy)
            : Parsed.Good(high ? new Band<IQuantity>(null, end.Value) : new Band<IQuantity>(end.Value, null));
    }

    // How people write bands elsewhere: 35-45 N·m, 40 ± 5 N·m, max 45 N·m, <= 45 N·m.
    private static string? Meant(string text)
    {
        if (Ends().Match(text) is { Success: true } ends)
        {
            return $"Write {ends.Groups["low"].Value} to {ends.Groups["high"].Value} {UnitIn(ends)}.";
        }

        if (Middle().Match(text) is { Success: true } middle && Figure.ParseExact(middle.Groups["middle"].Value) is { Wrong: null, Value: var centre } && Figure.ParseExact(middle.Groups["by"].Value) is { Wrong: null, Value: var by })
        {
            return string.Create(CultureInfo.InvariantCulture, $"Write {centre - by} to {centre + by} {UnitIn(middle)}.");
        }

        return OneEnd().Match(text) is { Success: true } end
            ? $"Write at {(end.Groups["least"].Success ? "least" : "most")} {end.Groups["end"].Value} {UnitIn(end)}."
            : null;
    }

    private static string UnitIn(Match match) => match.Groups["unit"].Value is { Length: > 0 } unit && UnitWords.Measured.Knows(unit) ? unit : "and the unit";

    [GeneratedRegex(@"^(?<low>[0-9.]+) ?(?<unit>[^0-9 -]*) ?- ?(?<high>[0-9.]+) ?(?<unit>[^0-9]*)\z", RegexOptions.None, 1000)]
    private static partial Regex Ends();

    [GeneratedRegex(@"^(?<middle>[0-9.]+) ?(?<unit>[^0-9±+]*?) ?(±|\+/-|\+-) ?(?<by>[0-9.]+) ?(?<unit>[^0-9]*)\z", RegexOptions.None, 1000)]
    private static partial Regex Middle();

    [GeneratedRegex(@"^((?<least>min[.]?|minimum|>=?|≥)|max[.]?|maximum|<=?|≤|up to) ?(?<end>[0-9.]+) ?(?<unit>[^0-9]*)\z", RegexOptions.IgnoreCase, 1000)]
    private static partial Regex OneEnd();

    private static string? After(string text, string start) =>
        text.StartsWith(start, StringComparison.Ordinal) ? text[start.Length..] : null;
}
