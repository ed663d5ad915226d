using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>Reads a target band of a measured value.</summary>
public static class BandText
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
            return Parsed.Bad<Band<IQuantity>>($"'{trimmed}' is not a band.");
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

    private static string? After(string text, string start) =>
        text.StartsWith(start, StringComparison.Ordinal) ? text[start.Length..] : null;
}
