namespace Layshaft.Engineering.Life;

/// <summary>
/// The product-limit estimate of survival (Kaplan and Meier 1958) with Greenwood's variance (1926); conventions as in
/// NIST/SEMATECH e-Handbook 8.2.1.5: a unit censored at a use is still at risk for a failure at that use.
/// </summary>
public sealed record KaplanMeier
{
    // S is a product of fractions; a half reached through them may miss 0.5 in the last bits.
    private const double EqualityTolerance = 1e-12;

    private KaplanMeier(UseMeasure measure, IReadOnlyList<KaplanMeierStep> steps, KaplanMeierLimits limits, double level, double seenTo)
    {
        SeenTo = seenTo;
        Measure = measure;
        Steps = steps;
        Limits = limits;
        Level = level;
    }

    /// <summary>What lives are counted in.</summary>
    public UseMeasure Measure { get; }

    /// <summary>The steps, shortest life first; empty when nothing failed.</summary>
    public IReadOnlyList<KaplanMeierStep> Steps { get; }

    /// <summary>The longest life in the sample, failed or not: the curve says nothing beyond it. 0 for an empty sample.</summary>
    public double SeenTo { get; }

    /// <summary>How the limits were formed.</summary>
    public KaplanMeierLimits Limits { get; }

    /// <summary>Two-sided level of the limits.</summary>
    public double Level { get; }

    /// <summary>The use by which half have failed, or <c>null</c> when the curve does not come down to a half.</summary>
    public double? Median => FirstAtOrBelowHalf(step => step.Survival);

    /// <summary>Limits of the median (Brookmeyer and Crowley 1982): where the limits of the curve come down to a half.</summary>
    public Bounds MedianBounds => new(
        Level, FirstAtOrBelowHalf(step => step.Limits.Lower), FirstAtOrBelowHalf(step => step.Limits.Upper));

    /// <summary>Works out the curve.</summary>
    /// <param name="sample">Lives, failed and still good.</param>
    /// <param name="limits">How limits are formed.</param>
    /// <param name="level">Two-sided level of the limits, between 0 and 1.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The level is not strictly between 0 and 1.</exception>
    public static KaplanMeier Of(LifeSample sample, KaplanMeierLimits limits = KaplanMeierLimits.LogLog, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(sample);
        Bounds.CheckLevel(level);
        var factor = Quantiles.Normal(0.5 + level / 2);
        var steps = new List<KaplanMeierStep>();
        var survival = 1.0;
        var greenwood = 0.0;
        var atRisk = sample.Lives.Count;
        foreach (var sameUse in sample.Lives.GroupBy(life => life.Amount))
        {
            var failed = sameUse.Count(life => life.Failed);
            if (failed > 0)
            {
                survival *= 1 - (double)failed / atRisk;
                greenwood += failed == atRisk ? 0 : (double)failed / ((double)atRisk * (atRisk - failed));
                double? error = failed == atRisk ? null : Math.Sqrt(greenwood);
                var bounds = new KaplanMeierLimit(limits, level, factor).About(survival, error);
                steps.Add(new KaplanMeierStep(sameUse.Key, atRisk, failed, survival, survival * error, bounds));
            }

            atRisk -= sameUse.Count();
        }

        return new KaplanMeier(sample.Measure, steps, limits, level, sample.Lives.Count == 0 ? 0 : sample.Lives[^1].Amount);
    }

    /// <summary>Share still good at a use.</summary>
    /// <param name="use">Use since new, up to <see cref="SeenTo"/>.</param>
    /// <returns>Between 0 and 1.</returns>
    public double SurvivalAt(double use) => Steps.LastOrDefault(step => step.At <= use)?.Survival ?? 1;

    // Where a curve lies exactly on a half for a stretch, the middle of the stretch is taken, as is usual for a median.
    private double? FirstAtOrBelowHalf(Func<KaplanMeierStep, double?> height)
    {
        for (var index = 0; index < Steps.Count; index++)
        {
            var value = height(Steps[index]);
            if (value is null || value > 0.5 + EqualityTolerance)
            {
                continue;
            }

            var onHalf = Math.Abs(value.Value - 0.5) <= EqualityTolerance;
            var restsUntil = index + 1 < Steps.Count ? Steps[index + 1].At : SeenTo;
            return onHalf ? (Steps[index].At + restsUntil) / 2 : Steps[index].At;
        }

        return null;
    }
}
