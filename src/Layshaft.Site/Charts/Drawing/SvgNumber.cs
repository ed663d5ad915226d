using System.Globalization;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>Writes numbers into attributes: two decimals at most, the same bytes in any culture.</summary>
internal static class SvgNumber
{
    /// <exception cref="ArgumentException">The number is not finite: the caller's data or range is wrong.</exception>
    public static string Of(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentException("A chart was given a number that is not finite.", nameof(value));
        }

        // Adding zero turns a rounded -0 into 0.
        return (Math.Round(value, 2, MidpointRounding.AwayFromZero) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
    }
}
