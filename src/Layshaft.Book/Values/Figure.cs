using System.Globalization;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>Strict reading of numbers: digits, one point, nothing else. A remedy is given only where the number can be guessed.</summary>
public static class Figure
{
    /// <summary>A decimal number: <c>12</c>, <c>0.35</c>, <c>-4</c>. No exponent, no thousands mark, no leading zero.</summary>
    public static Parsed<double> Parse(string text)
    {
        var parsed = ParseExact(text);
        return parsed.Wrong is null ? Parsed.Good((double)parsed.Value) : Parsed.Bad<double>(parsed.Wrong, parsed.Remedy);
    }

    /// <summary>As <see cref="Parse"/>, exactly.</summary>
    public static Parsed<decimal> ParseExact(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var digits = text.Replace('\u2212', '-');
        var unsigned = digits.StartsWith('-') || digits.StartsWith('+') ? digits[1..] : digits;
        if (unsigned.Length is 0 or > 18 || !unsigned.All(c => c is (>= '0' and <= '9') or '.'))
        {
            return Parsed.Bad<decimal>(WhatElse(text, unsigned), WithoutComma(unsigned));
        }

        if (unsigned.Count(c => c == '.') > 1 || unsigned[0] == '.' || unsigned[^1] == '.')
        {
            return Parsed.Bad<decimal>($"'{text}' is not a number.");
        }

        if (unsigned.Length > 1 && unsigned[0] == '0' && unsigned[1] != '.')
        {
            return Parsed.Bad<decimal>(
                $"'{text}' begins with a zero, which some programs read as another number.",
                $"Write {unsigned.TrimStart('0').PadLeft(1, '0')}.");
        }

        return Parsed.Good(decimal.Parse(digits, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));
    }

    /// <summary>A whole number.</summary>
    public static Parsed<int> ParseWhole(string text)
    {
        var parsed = ParseExact(text);
        if (parsed.Wrong is not null)
        {
            return Parsed.Bad<int>(parsed.Wrong, parsed.Remedy);
        }

        return decimal.Truncate(parsed.Value) != parsed.Value || text.Contains('.', StringComparison.Ordinal) || Math.Abs(parsed.Value) > 100_000_000m
            ? Parsed.Bad<int>($"'{text}' is not a whole number.")
            : Parsed.Good((int)parsed.Value);
    }

    private static string WhatElse(string text, string unsigned)
    {
        var shown = text.Length > 60 ? text[..60] + "…" : text;
        return unsigned.Contains(',', StringComparison.Ordinal)
            ? $"'{shown}' has a comma."
            : unsigned.Contains(':', StringComparison.Ordinal)
                ? $"'{shown}' has a colon, which some programs read as a number to base 60."
                : $"'{shown}' is not a number.";
    }

    /// <summary>What to write for a number with a comma: with a point, or without a mark where it may have stood between thousands; null for others.</summary>
    /// <param name="number">The number.</param>
    /// <param name="unit">What follows it, with its space.</param>
    internal static string? WithoutComma(string number, string unit = "")
    {
        var parts = number.Split(',');
        return parts.Length != 2 || !parts.All(p => p.Length > 0 && p.All(char.IsAsciiDigit))
            ? null
            : parts[1].Length == 3
                ? $"Write {parts[0]}{parts[1]}{unit} or {parts[0]}.{parts[1]}{unit}, whichever is meant."
                : $"Write {parts[0]}.{parts[1]}{unit}.";
    }
}
