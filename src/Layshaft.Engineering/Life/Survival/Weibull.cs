namespace Layshaft.Engineering.Life;

/// <summary>
/// Maximum likelihood for the two-parameter Weibull distribution S(t) = exp(−(t/η)^β) with right-censored units
/// (Meeker and Escobar, Statistical Methods for Reliability Data, 1998, ch. 8, from memory; NIST/SEMATECH e-Handbook 8.4.1.2).
/// </summary>
public static class Weibull
{
    /// <summary>
    /// Failures below which nothing is said. Two parameters are estimated: with two failures the fit passes them whatever
    /// they are, so three is the least number from which scatter can show at all; bounds from so few stay wide, and say so.
    /// </summary>
    public const int LeastFailures = 3;

    /// <summary>Fits the distribution.</summary>
    /// <param name="sample">Lives, failed and still good.</param>
    /// <param name="leastFailures">Failures below which nothing is said; at least 2.</param>
    /// <returns>A <see cref="WeibullFit"/>, or a <see cref="LifeUnsaid"/> with the reason.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="leastFailures"/> is below 2.</exception>
    public static LifeEstimate Fit(LifeSample sample, int leastFailures = LeastFailures)
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentOutOfRangeException.ThrowIfLessThan(leastFailures, 2);
        var failures = sample.Failures;
        if (failures < leastFailures)
        {
            return new LifeUnsaid(LifeUnsaidReason.TooFewFailures, sample.Lives.Count, failures, leastFailures);
        }

        var longest = sample.Lives[^1].Amount;
        if (sample.Lives.All(life => !life.Failed || life.Amount == longest))
        {
            return new LifeUnsaid(LifeUnsaidReason.NoSpread, sample.Lives.Count, failures, leastFailures);
        }

        var likelihood = new WeibullLikelihood(sample.Lives);
        var shape = likelihood.BestShape();
        var scale = likelihood.BestScale(shape);
        return new WeibullFit(sample.Measure, likelihood, shape, scale);
    }
}
