using System.Globalization;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Cli.Entering;

/// <summary>What a person or a gauge with keyboard output types: a number with a decimal point or comma, with or without a unit, with leading zeros.</summary>
internal static class GaugeText
{
    /// <summary>Reads it as a number in the unit of a model, ready to be written into the job.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="model">A quantity in the unit that is wanted.</param>
    public static Parsed<string> Read(string typed, IQuantity model)
    {
        var (number, unit) = QuantityParts.Split(typed);
        var plain = number.Replace('\u2212', '-').TrimStart('+');
        if (plain.Count(c => c == ',') == 1 && !plain.Contains('.', StringComparison.Ordinal))
        {
            plain = plain.Replace(',', '.');
        }

        var isNegative = plain.StartsWith('-');
        var digits = plain.TrimStart('-').TrimStart('0');
        plain = (isNegative ? "-" : "") + (digits.Length == 0 || digits[0] == '.' ? "0" : "") + digits;
        var figure = Figure.Parse(plain);
        if (number.Length == 0 || figure.Wrong is not null)
        {
            return Parsed.Bad<string>($"'{Short(typed)}' is not a reading.");
        }

        if (unit.Length == 0)
        {
            return Parsed.Good(plain);
        }

        var value = UnitWords.Measured.Make(plain, unit);
        if (value.Wrong is not null || !value.Value!.IsLike(model))
        {
            return Parsed.Bad<string>($"'{Short(unit)}' is not a unit of this measure.");
        }

        return Parsed.Good(value.Value!.Unit.Equals(model.Unit) ? plain : ((double)value.Value!.As(model.Unit)).ToString("0.######", CultureInfo.InvariantCulture));
    }

    private static string Short(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
