namespace Layshaft.Engineering.Life;

/// <summary>Roots of a function of one variable in a bracket found by outward search (Brent's method through Math.NET, bisection where it gives up).</summary>
internal static class RootSearch
{
    /// <summary>Root of a function that is positive to the left of it and negative to the right, searched outward from a start.</summary>
    /// <returns>The root, or <c>null</c> when none lies within the reach.</returns>
    public static double? FallingThroughZero(Func<double, double> raw, double start, double firstStep, double reach)
    {
        // Same root and signs, but never infinite: exponentials overflow far from the root and would spoil the interpolation.
        double Function(double x)
        {
            var value = raw(x);
            return double.IsInfinity(value) ? Math.Sign(value) : value / (1 + Math.Abs(value));
        }

        var atStart = Function(start);
        if (atStart == 0)
        {
            return start;
        }

        var direction = atStart > 0 ? 1 : -1;
        var inner = start;
        for (var step = firstStep; Math.Abs(inner - start) <= reach; step *= 2)
        {
            var outer = inner + direction * step;
            var value = Function(outer);
            if (double.IsNaN(value))
            {
                return null;
            }

            if (value == 0)
            {
                return outer;
            }

            if (value > 0 != atStart > 0)
            {
                return Between(Function, Math.Min(inner, outer), Math.Max(inner, outer));
            }

            inner = outer;
        }

        return null;
    }

    private static double Between(Func<double, double> function, double low, double high) =>
        MathNet.Numerics.RootFinding.Brent.TryFindRoot(function, low, high, 1e-14, 500, out var root)
            ? root
            : Bisect(function, low, high);

    private static double Bisect(Func<double, double> function, double low, double high)
    {
        var lowIsPositive = function(low) > 0;
        for (var step = 0; step < 200; step++)
        {
            var middle = low + (high - low) / 2;
            if (middle <= low || middle >= high)
            {
                break;
            }

            if (function(middle) > 0 == lowIsPositive)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low + (high - low) / 2;
    }
}
