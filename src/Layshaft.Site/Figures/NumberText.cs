using System.Globalization;
using System.Text;

namespace Layshaft.Site.Figures;

/// <summary>Writes a number with a fixed count of decimals, in the marks of a <see cref="UnitChoice"/>.</summary>
/// <remarks>
/// A half is rounded away from nought, and is judged on the decimal digits that a person would read: the nearest number of
/// 15 significant digits, so that 1.005 becomes 1.01 although the nearest double lies below it. The minus sign is U+2212;
/// nought never has one.
/// </remarks>
internal static class NumberText
{
    internal const char NarrowSpace = '\u202F';
    internal const char Minus = '\u2212';
    private const double Largest = 1e15;

    internal static string Write(double value, int decimals, UnitChoice choice, bool withSign = false)
    {
        // Written so that NaN is refused, too.
        if (!(Math.Abs(value) < Largest))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Only finite numbers below 10^15 are written.");
        }

        return Write((decimal)value, decimals, choice, withSign);
    }

    internal static string Write(decimal value, int decimals, UnitChoice choice, bool withSign = false)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, 9);
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        var digits = Math.Abs(rounded).ToString($"F{decimals}", CultureInfo.InvariantCulture);
        var whole = decimals == 0 ? digits : digits[..^(decimals + 1)];
        var text = new StringBuilder();
        if (rounded != 0 && (rounded < 0 || withSign))
        {
            text.Append(rounded < 0 ? Minus : '+');
        }

        AppendGrouped(text, whole, choice);
        if (decimals > 0)
        {
            text.Append(choice.DecimalComma ? ',' : '.').Append(digits, whole.Length + 1, decimals);
        }

        return text.ToString();
    }

    private static void AppendGrouped(StringBuilder text, string whole, UnitChoice choice)
    {
        var from = choice.Grouping switch
        {
            DigitGrouping.NarrowSpace => 5,
            DigitGrouping.Mark => 4,
            _ => int.MaxValue,
        };
        var mark = choice.Grouping == DigitGrouping.NarrowSpace ? NarrowSpace : choice.DecimalComma ? '.' : ',';
        for (var i = 0; i < whole.Length; i++)
        {
            if (whole.Length >= from && i > 0 && (whole.Length - i) % 3 == 0)
            {
                text.Append(mark);
            }

            text.Append(whole[i]);
        }
    }
}
