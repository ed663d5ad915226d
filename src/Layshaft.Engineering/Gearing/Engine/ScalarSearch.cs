namespace Layshaft.Engineering.Gearing;

/// <summary>Greatest values and zero crossings of a function of one number over a range, by scan and refinement.</summary>
internal static class ScalarSearch
{
    private const int Refinements = 80;

    /// <summary>Where the function is greatest: an even scan, then golden section around the best of it.</summary>
    internal static double Maximum(Func<double, double> function, double low, double high, int steps)
    {
        double width = (high - low) / steps;
        int best = 0;
        double bestValue = double.NegativeInfinity;
        for (int i = 0; i <= steps; i++)
        {
            double value = function(low + (i * width));
            if (value > bestValue)
            {
                (best, bestValue) = (i, value);
            }
        }

        const double Golden = 0.6180339887498949;
        double a = Math.Max(low, low + ((best - 1) * width));
        double b = Math.Min(high, low + ((best + 1) * width));
        for (int i = 0; i < Refinements; i++)
        {
            double left = b - (Golden * (b - a));
            double right = a + (Golden * (b - a));
            if (function(left) < function(right))
            {
                a = left;
            }
            else
            {
                b = right;
            }
        }

        double middle = (a + b) / 2;
        double scanned = low + (best * width);
        return function(middle) > bestValue ? middle : scanned;
    }

    /// <summary>Where the function changes sign between low and high, which must have different signs: bisection.</summary>
    internal static double Zero(Func<double, double> function, double low, double high)
    {
        bool lowIsPositive = function(low) > 0;
        for (int i = 0; i < Refinements && low < high; i++)
        {
            double middle = low + ((high - low) / 2);
            if (function(middle) > 0 == lowIsPositive)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low + ((high - low) / 2);
    }
}
