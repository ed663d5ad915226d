using System.Globalization;
using Layshaft.Book.Values;

namespace Layshaft.Book.Shapes;

/// <summary>Which signs a number may have.</summary>
internal enum Sign
{
    /// <summary>Any number.</summary>
    Any,

    /// <summary>Zero or more.</summary>
    NotNegative,

    /// <summary>More than zero.</summary>
    Positive,
}

/// <summary>
/// Regular expressions (ECMA 262, with the u flag or without) for the values that the reader takes. They say what the
/// parsers of <see cref="Values"/> say; a test holds the two against each other.
/// </summary>
internal static class Patterns
{
    /// <summary>A day of the years 1950 to 2199; whether a year has a 29th of February is left to the reader.</summary>
    public const string Date =
        "^(?:19[5-9][0-9]|2[01][0-9]{2})-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)|02-(?:0[1-9]|[12][0-9]))$";

    /// <summary>The blanks that may stand between a number and its unit.</summary>
    public const string Space = @"[ \u00A0\u202F]*";
    private const string Unsigned = "(?:0|[1-9][0-9]*)(?:[.][0-9]+)?";
    private const string Zero = "0(?:[.]0+)?";

    /// <summary>A number as <see cref="Figure.Parse"/> takes it, without anchors.</summary>
    public static string Number(Sign sign) => sign switch
    {
        Sign.Any => $"[-+−]?{Unsigned}",
        Sign.NotNegative => $"(?:[+]?{Unsigned}|[-−]{Zero})",
        _ => $"[+]?(?!{Zero}(?![.0-9])){Unsigned}",
    };

    /// <summary>A number with one of a quantity's units, without anchors.</summary>
    public static string Quantity<T>(QuantityText<T> text, Sign sign) =>
        $"{Number(sign)}{Space}(?:{string.Join('|', text.UnitWords.Distinct(StringComparer.Ordinal).Select(Literal))})";

    /// <summary>A band of measured values.</summary>
    public static string Band()
    {
        var end = Quantity(UnitWords.Measured, Sign.Any);
        return Whole($@"(?:at (?:most|least)\s+{end}|(?:{Number(Sign.Any)}|{end})\s*(?: to |–)\s*{end})");
    }

    /// <summary>Two gears, driven/driver.</summary>
    public static string Teeth()
    {
        var count = $"[+]?{Whole(Values.Teeth.Fewest, Values.Teeth.Most)}";
        return Whole($@"{count}\s*/\s*{count}");
    }

    /// <summary>Two ramp angles, drive/coast.</summary>
    public static string Ramps()
    {
        var angle = Whole(RampAngles.Least, RampAngles.Most) + Space + "°";
        return Whole($@"{angle}\s*/\s*{angle}");
    }

    /// <summary>A share of 100 %; <paramref name="part"/> for one from 0 to 100 %.</summary>
    public static string Share(bool part) => Whole(part
        ? $"(?:[+]?(?:100(?:[.]0+)?|[1-9]?[0-9](?:[.][0-9]+)?)|[-−]{Zero}){Space}%"
        : $"{Number(Sign.Any)}{Space}%");

    /// <summary>A pattern for the whole text, with blanks around it.</summary>
    public static string Whole(string inner) => $@"^\s*{inner}\s*$";

    /// <summary>The whole numbers from one to another, without sign or anchors.</summary>
    public static string Whole(int least, int most)
    {
        var parts = new List<string>();
        for (var from = least; from <= most;)
        {
            // The longest run from here that is a fixed head followed by free digits.
            var step = 1;
            while (step <= int.MaxValue / 100 && from % (step * 10) == 0 && from > 0 && from + (step * 10) - 1 <= most)
            {
                step *= 10;
            }

            var head = from / step;
            var last = head;
            while (last % 10 != 9 && ((last + 2) * step) - 1 <= most)
            {
                last++;
            }

            parts.Add(Run(head, last) + string.Concat(Enumerable.Repeat("[0-9]", Digits(step) - 1)));
            from = (last + 1) * step;
        }

        return $"(?:{string.Join('|', parts)})";
    }

    private static string Run(int head, int last)
    {
        var front = head / 10 == 0 ? string.Empty : (head / 10).ToString(CultureInfo.InvariantCulture);
        return head == last ? $"{front}{head % 10}" : $"{front}[{head % 10}-{last % 10}]";
    }

    private static int Digits(int number) => number.ToString(CultureInfo.InvariantCulture).Length;

    private static string Literal(string text) => string.Concat(text.Select(c => "\\^$.*+?()[]{}|/".Contains(c, StringComparison.Ordinal) ? $"\\{c}" : c.ToString()));
}
