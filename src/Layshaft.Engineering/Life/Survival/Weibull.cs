namespace Layshaft.Engineering.Life;

/// <summary>
/// Maximum likelihood for the two-parameter Weibull distribution S(t) = exp(−(t/η)^β) of lives that are seen at
/// inspections (<see cref="ObservedLife"/>).
/// </summary>
public static class Weibull
{
    /// <summary>
    /// Failures below which nothing is said. Two parameters are estimated: with two failures the fit passes them whatever
    /// they are, so three is the least number from which scatter can show at all.
    /// </summary>
    public const int LeastFailures = 3;

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
