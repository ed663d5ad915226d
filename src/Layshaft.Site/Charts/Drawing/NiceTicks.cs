namespace Layshaft.Site.Charts.Drawing;

/// <summary>
/// Round tick values: steps of 1, 2 or 5 times a power of ten, after P. Heckbert, "Nice numbers for graph labels",
/// Graphics Gems (1990).
/// </summary>
internal static class NiceTicks
{
    /// <summary>The smallest round step that needs no more than <paramref name="most"/> intervals.</summary>
    public static double Step(double range, int most)
    {
        if (!double.IsFinite(range) || range <= 0)
        {
            throw new ArgumentException("Ticks need a finite range above zero.", nameof(range));
        }

        var rough = range / Math.Max(1, most);
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        foreach (var leading in (ReadOnlySpan<double>)[1, 2, 5])
        {
            if (leading * power >= rough * (1 - 1e-9))
            {
                return leading * power;
            }
        }

        return 10 * power;
    }

    /// <summary>The multiples of the step from <paramref name="from"/> to <paramref name="to"/>, both ends included.</summary>
    public static IReadOnlyList<double> Between(double from, double to, int most)
    {
        var step = Step(to - from, most);
        var first = Math.Ceiling((from / step) - 1e-9);
        var last = Math.Floor((to / step) + 1e-9);
        List<double> ticks = [];
        for (var i = 0; first + i <= last && i <= most + 1; i++)
        {
            // A multiple, not a running sum, and rounded: 3 × 0.1 is then written 0.3.
            ticks.Add(Round((first + i) * step, step));
        }

        return ticks;
    }

    /// <summary>The first multiple of the step at or above <paramref name="value"/>.</summary>
    public static double Above(double value, double step) => Round(Math.Ceiling((value / step) - 1e-9) * step, step);

    private static double Round(double value, double step)
    {
        var decimals = (int)Math.Clamp(1 - Math.Floor(Math.Log10(step)), 0, 15);
        return Math.Round(value, decimals) + 0.0;
    }
}
