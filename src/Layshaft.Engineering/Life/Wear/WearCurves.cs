namespace Layshaft.Engineering.Life;

/// <summary>The powers of usage that a part's readings allow.</summary>
/// <remarks>
/// A straight line through wear that gathers pace passes the limit before its bounds say so. So every power from 0.5 to 3 is fitted, and those
/// that the readings do not exclude count: a power is excluded when its sum of squared residuals exceeds the best one's by more than chance explains
/// (F test of one parameter, the scatter pooled with the readings' own uncertainty).
/// </remarks>
internal static class WearCurves
{
    public static readonly double[] Powers = [0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.15, 1.3, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3];

    /// <summary>The curves that the readings allow, the one to show first: the straight line if it is among them, else the best.</summary>
    /// <returns>At least one curve; none when the readings bend more than any of the powers.</returns>
    public static IReadOnlyList<WearCurve> Allowed(double[] uses, double[] wears, WearTrendChoices choices)
    {
        var unit = uses.Max();
        WearCurve[] curves = [.. Powers.Select(power => Of(uses, wears, unit, power, choices))];
        var best = curves.MinBy(curve => curve.Fit.ResidualSumOfSquares)!;
        var least = best.Fit.ResidualSumOfSquares;
        var excess = Excess(least, best.Fit.DegreesOfFreedom - 1, choices.ReadingUncertainty, choices.Level);
        WearCurve[] allowed = [.. curves.Where(curve => curve.Fit.ResidualSumOfSquares - least <= excess)];
        var straight = Array.Find(allowed, curve => curve.IsStraight);
        return straight is null && best.Power is 0.5 or 3
            ? []
            : [straight ?? best, .. allowed.Where(curve => curve != (straight ?? best))];
    }

    /// <summary>By how much a power's sum of squared residuals may exceed the best one's.</summary>
    /// <param name="least">The best one's.</param>
    /// <param name="residualFreedom">Its degrees of freedom, the power counted as fitted.</param>
    /// <param name="readingUncertainty">Standard uncertainty of a reading, 0 if unknown.</param>
    /// <param name="level">Level of the test.</param>
    public static double Excess(double least, int residualFreedom, double readingUncertainty, double level)
    {
        var own = readingUncertainty * readingUncertainty;
        var known = own > 0 ? LinearFit.ReadingFreedom : 0;
        var freedom = residualFreedom + known;
        return freedom > 0
            ? Math.Pow(Quantiles.StudentT(0.5 + level / 2, freedom), 2) * Math.Max(own, (least + known * own) / freedom)
            : double.PositiveInfinity;
    }

    private static WearCurve Of(double[] uses, double[] wears, double unit, double power, WearTrendChoices choices)
    {
        double[] scaled = [.. uses.Select(use => Math.Pow(use / unit, power))];
        var fit = choices.ThroughNewValue ? LinearRegression.FitThroughOrigin(scaled, wears) : LinearRegression.Fit(scaled, wears);
        return new WearCurve(power, unit, fit with { ReadingUncertainty = choices.ReadingUncertainty });
    }
}
