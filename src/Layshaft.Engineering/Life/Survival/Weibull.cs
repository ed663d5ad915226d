namespace Layshaft.Engineering.Life;

/// <summary>
/// Maximum likelihood for the two-parameter Weibull distribution S(t) = exp(−(t/η)^β) of lives that are seen at
/// inspections (<see cref="ObservedLife"/>).
/// </summary>
public static class Weibull
{
    /// <summary>
    /// Failures below which no life is estimated: with three the simulated bounds of B10 are far wider than their level asks for, because
    /// they say little more than where the inspections were.
    /// </summary>
    public const int LeastFailures = 4;

    /// <summary>Parts below which nothing is said: with fewer the simulated bounds do not hold as often as they claim.</summary>
    public const int LeastParts = 8;

    /// <summary>Fits the distribution.</summary>
    /// <param name="sample">Lives, failed and still good.</param>
    /// <returns>A <see cref="WeibullFit"/>, or a <see cref="LifeUnsaid"/> with the reason.</returns>
    public static LifeEstimate Fit(LifeSample sample)
    {
        ArgumentNullException.ThrowIfNull(sample);
        if (sample.Failures < LeastFailures || sample.Lives.Count < LeastParts)
        {
            return new LifeUnsaid(LifeUnsaidReason.TooFew, sample.Lives.Count, sample.Failures);
        }

        var likelihood = new WeibullLikelihood(sample);
        return likelihood.BestShape() is { } shape && likelihood.BestScale(shape) is { } scale
            ? new WeibullFit(sample.Measure, likelihood, shape, scale)
            : new LifeUnsaid(LifeUnsaidReason.NoSpread, sample.Lives.Count, sample.Failures);
    }
}
