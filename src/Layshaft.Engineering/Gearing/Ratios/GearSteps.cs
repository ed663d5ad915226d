namespace Layshaft.Engineering.Gearing;

/// <summary>Sets of ratios laid out by rule, to hold a real set against.</summary>
public static class GearSteps
{
    /// <summary>
    /// The constant step of a geometric set, total spread^(1/(z−1)): the same drop in engine speed at every shift,
    /// ever wider gaps in road speed.
    /// </summary>
    /// <param name="spread">First ratio over top ratio, above 1.</param>
    /// <param name="gears">Number of gears z, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double Geometric(double spread, int gears)
    {
        Check(spread, gears);
        return Math.Pow(spread, 1.0 / (gears - 1));
    }

    /// <summary>
    /// The ratios of a progressive set relative to top gear, first gear first: i_n = p1^(z−n) · p2^((z−n)(z−n−1)/2),
    /// each step p2 times the next one up (Naunheimer et al., <i>Automotive Transmissions</i>, from memory).
    /// </summary>
    /// <param name="spread">First ratio over top ratio, above 1.</param>
    /// <param name="gears">Number of gears z, 2 or more.</param>
    /// <param name="progression">p2, usually 1.0 to 1.2; 1 is the geometric set.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static IReadOnlyList<double> Progressive(double spread, int gears, double progression)
    {
        Check(spread, gears);
        if (!(progression is > 0 and < 10))
        {
            throw new ArgumentOutOfRangeException(nameof(progression), progression, "Above 0 and below 10.");
        }

        int last = gears - 1;
        double p1 = Math.Pow(spread / Math.Pow(progression, 0.5 * last * (last - 1)), 1.0 / last);
        return Enumerable.Range(0, gears)
            .Select(i => last - i)
            .Select(k => Math.Pow(p1, k) * Math.Pow(progression, 0.5 * k * (k - 1)))
            .ToArray();
    }

    private static void Check(double spread, int gears)
    {
        if (!(spread > 1 && double.IsFinite(spread)))
        {
            throw new ArgumentOutOfRangeException(nameof(spread), spread, "Above 1.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(gears, 2);
    }
}
