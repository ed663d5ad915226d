using System.Globalization;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>Writes numbers into attributes: two decimals at most, the same bytes in any culture.</summary>
internal static class SvgNumber
{
    /// <summary>Room that any number below 10^12 finds enough.</summary>
    public const int Room = 20;

    private const double LargestQuick = 1e12;

    /// <exception cref="ArgumentException">The number is not finite: the caller's data or range is wrong.</exception>
    public static string Of(double value)
    {
        Span<char> text = stackalloc char[Room];
        return TryWrite(value, text, out var length) ? new string(text[..length]) : Rounded(value).ToString("0.##", CultureInfo.InvariantCulture);
    }

    /// <summary>Writes a number to the start of a span.</summary>
    /// <param name="value">The number.</param>
    /// <param name="to">At least <see cref="Room"/> characters.</param>
    /// <param name="length">How many characters it took.</param>
    /// <returns>Whether there was room for it: always below 10^12.</returns>
    /// <exception cref="ArgumentException">The number is not finite: the caller's data or range is wrong.</exception>
    public static bool TryWrite(double value, Span<char> to, out int length)
    {
        length = 0;
        var rounded = Rounded(value);
        if (!(Math.Abs(rounded) < LargestQuick))
        {
            return false;
        }

        // A whole number of hundredths: the double next to it is the one that was rounded to.
        var hundredths = (long)Math.Round(rounded * 100);
        if (hundredths < 0)
        {
            (to[length++], hundredths) = ('-', -hundredths);
        }

        var (whole, rest) = Math.DivRem(hundredths, 100L);
        whole.TryFormat(to[length..], out var digits, default, CultureInfo.InvariantCulture);
        length += digits;
        if (rest > 0)
        {
            to[length++] = '.';
            to[length++] = (char)('0' + (rest / 10));
            if (rest % 10 > 0)
            {
                to[length++] = (char)('0' + (rest % 10));
            }
        }

        return true;
    }

    // Adding zero turns a rounded -0 into 0.
    private static double Rounded(double value) => double.IsFinite(value)
        ? Math.Round(value, 2, MidpointRounding.AwayFromZero) + 0.0
        : throw new ArgumentException("A chart was given a number that is not finite.", nameof(value));
}
