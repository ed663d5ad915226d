namespace Layshaft.Engineering.Life;

/// <summary>
/// Solves (rise − slope·d)² ≤ spread²·(constant + d²/Sxx) for d, the set of offsets at which the interval about a line
/// contains a given height (Fieller, J. R. Stat. Soc. B 16, 1954).
/// </summary>
internal static class Fieller
{
    /// <summary>The part of the set that holds the estimate rise/slope; an open end is <c>null</c>.</summary>
    public static (double? Lower, double? Upper) Solve(
        double slope, double rise, double spreadSquared, double constant, double sumOfSquaresX)
    {
        // a·d² − 2·b·d + c ≤ 0
        var a = slope * slope - spreadSquared / sumOfSquaresX;
        var b = slope * rise;
        var c = rise * rise - spreadSquared * constant;
        var quarterDiscriminant = spreadSquared * (rise * rise / sumOfSquaresX + a * constant);
        if (quarterDiscriminant < 0)
        {
            return (null, null); // the interval contains the height everywhere
        }

        // Both roots without cancellation: the larger directly, the smaller through the product of the roots.
        var q = b >= 0 ? b + Math.Sqrt(quarterDiscriminant) : b - Math.Sqrt(quarterDiscriminant);
        if (q == 0)
        {
            return a > 0 ? (0, 0) : (null, null);
        }

        var near = c / q;
        if (a > 0)
        {
            var far = q / a;
            return (Math.Min(near, far), Math.Max(near, far));
        }

        // The slope is not distinguishable from zero at this level: two rays are left, and one holds the estimate.
        var estimate = rise / slope;
        var other = a < 0 ? q / a : (double?)null;
        var low = other is { } o ? Math.Min(near, o) : near;
        var high = other is { } p ? Math.Max(near, p) : near;
        return estimate >= high ? (high, null) : (null, low);
    }
}
