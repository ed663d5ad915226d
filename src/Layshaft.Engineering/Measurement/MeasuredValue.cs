using MathNet.Numerics.Distributions;

namespace Layshaft.Engineering.Measurement;

/// <summary>
/// The result of a measurement as plain numbers in one unit: value, uncertainty and what its readings look like.
/// <see cref="MeasuredQuantity"/> is the same with its unit.
/// </summary>
/// <param name="Value">Mean of the readings.</param>
/// <param name="Budget">Contributions to its uncertainty, in the unit of the value.</param>
/// <param name="Confidence">Confidence of the expanded uncertainty, above 0 and below 1.</param>
public sealed record MeasuredValue(double Value, UncertaintyBudget Budget, double Confidence = CoverageFactor.UsualConfidence)
{
    /// <summary>Chance of blaming honest scatter on something new when it is compared with the expected one.</summary>
    private const double ScatterSignificance = 0.05;

    /// <summary>Weight of the expected scatter beside one that exceeds it: taken as uncertain by half (JCGM 100:2008, G.4.2).</summary>
    private const int ExpectedDegreesOfFreedom = 2;

    /// <summary>Number of readings behind the value.</summary>
    public int ReadingCount { get; init; } = 1;

    /// <summary>Sample standard deviation of the readings; <see langword="null"/> for a single reading.</summary>
    public double? StandardDeviation { get; init; }

    /// <summary>Grubbs' verdict on the most extreme reading.</summary>
    public GrubbsTest Outlier { get; init; } = new(OutlierStatus.NotTested, null, 0);

    /// <summary>Smallest step of the instrument in the unit of the value, 0 or more; 0 if not stated.</summary>
    public double Resolution { get; init; }

    /// <summary>Whether the readings scatter more than the figures of the instrument explain; the scatter then counts too.</summary>
    public bool ScatterExceedsRepeatability { get; init; }

    /// <summary>
    /// Whether the uncertainty is known. Without figures of the instrument it is not, however well the readings agree: they
    /// share its error. Every decision is then bare comparison.
    /// </summary>
    public bool UncertaintyIsKnown => Budget.Components.Count > 0;

    /// <summary>Combined standard uncertainty.</summary>
    public double StandardUncertainty => Budget.StandardUncertainty;

    /// <summary>Expanded uncertainty at <see cref="Confidence"/>.</summary>
    public double ExpandedUncertainty => Budget.ExpandedUncertainty(Confidence);

    /// <summary>Lower end of the uncertainty interval.</summary>
    public double Lower => Value - ExpandedUncertainty;

    /// <summary>Upper end of the uncertainty interval.</summary>
    public double Upper => Value + ExpandedUncertainty;

    /// <summary>
    /// Works out a result from readings and instrument. A stated repeatability s₀ gives the type A part s₀/√n for any number
    /// of readings (JCGM 100:2008, 4.2.4); without one the limit of error covers it, because it bounds each single reading.
    /// Only if the readings are more than a step apart and scatter significantly more than that (χ² at 5 %), their scatter counts,
    /// pooled with the expected one.
    /// </summary>
    /// <param name="readings">One or more readings in one unit.</param>
    /// <param name="instrument">What is known of the instrument, in the same unit.</param>
    /// <param name="confidence">Confidence of the expanded uncertainty, above 0 and below 1.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentException">There is no reading, or one is not a finite number.</exception>
    public static MeasuredValue From(
        IReadOnlyList<double> readings, InstrumentFigures instrument, double confidence = CoverageFactor.UsualConfidence)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        var sample = SampleStatistics.Of(readings);
        var expected = instrument.ExpectedScatter(sample.Mean);
        var excess = instrument.AreKnown && readings.Max() - readings.Min() > 1.005 * instrument.Resolution && Exceeds(sample, expected);
        var budget = new UncertaintyBudget(instrument.TypeB(sample.Mean));
        return new MeasuredValue(
            sample.Mean,
            excess ? budget.With(Pooled(sample, expected))
                : instrument.Repeatability > 0 ? budget.With(UncertaintyComponent.Known("stated repeatability", expected / Math.Sqrt(sample.Count)))
                : budget,
            confidence)
        {
            ReadingCount = sample.Count,
            StandardDeviation = sample.StandardDeviation,
            Resolution = instrument.Resolution,
            Outlier = GrubbsTest.Of(readings, instrument.Resolution),
            ScatterExceedsRepeatability = excess,
        };
    }

    // Pooled variance of two estimates of one scatter (weighted by degrees of freedom; JCGM 100:2008, 4.2.4 and G.4.2).
    private static UncertaintyComponent Pooled(SampleStatistics sample, double expected)
    {
        var degrees = sample.DegreesOfFreedom + ExpectedDegreesOfFreedom;
        var own = sample.StandardDeviation!.Value;
        var variance = ((sample.DegreesOfFreedom * own * own) + (ExpectedDegreesOfFreedom * expected * expected)) / degrees;
        return new UncertaintyComponent("scatter of the readings", Math.Sqrt(variance / sample.Count), degrees);
    }

    private static bool Exceeds(SampleStatistics sample, double expected)
    {
        if (sample.StandardDeviation is not { } scatter)
        {
            return false;
        }

        var limit = ChiSquared.InvCDF(sample.DegreesOfFreedom, 1 - ScatterSignificance);
        return sample.DegreesOfFreedom * scatter * scatter > limit * expected * expected;
    }
}
