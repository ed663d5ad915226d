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
    /// <summary>Chance of blaming honest scatter on something new when it is compared with the stated repeatability.</summary>
    private const double ScatterSignificance = 0.05;

    /// <summary>Number of readings behind the value.</summary>
    public int ReadingCount { get; init; } = 1;

    /// <summary>Sample standard deviation of the readings; <see langword="null"/> for a single reading.</summary>
    public double? StandardDeviation { get; init; }

    /// <summary>Grubbs' verdict on the most extreme reading.</summary>
    public GrubbsTest Outlier { get; init; } = new(OutlierStatus.NotTested, null, 0);

    /// <summary>Whether the readings scatter more than the stated repeatability explains; the scatter itself is then used.</summary>
    public bool ScatterExceedsRepeatability { get; init; }

    /// <summary>Whether anything is known of the uncertainty; without it every decision is bare comparison.</summary>
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
    /// of readings (JCGM 100:2008, 4.2.4), unless the readings scatter significantly more (χ² at 5 %); without one the
    /// readings' own scatter gives it, and a single reading has none.
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
        var excess = ExceedsRepeatability(sample, instrument.Repeatability);
        var typeA = TypeA(sample, excess ? 0 : instrument.Repeatability);
        var budget = new UncertaintyBudget(instrument.TypeB(sample.Mean));
        return new MeasuredValue(sample.Mean, typeA is null ? budget : budget.With(typeA), confidence)
        {
            ReadingCount = sample.Count,
            StandardDeviation = sample.StandardDeviation,
            Outlier = GrubbsTest.Of(readings, instrument.Resolution),
            ScatterExceedsRepeatability = excess,
        };
    }

    private static UncertaintyComponent? TypeA(SampleStatistics sample, double repeatability) => repeatability > 0
        ? UncertaintyComponent.Known("stated repeatability", repeatability / Math.Sqrt(sample.Count))
        : sample.StandardUncertaintyOfMean is { } scatter
            ? new UncertaintyComponent("scatter of the readings", scatter, sample.DegreesOfFreedom)
            : null;

    private static bool ExceedsRepeatability(SampleStatistics sample, double repeatability)
    {
        if (repeatability <= 0 || sample.StandardDeviation is not { } scatter)
        {
            return false;
        }

        var ratio = scatter / repeatability;
        return sample.DegreesOfFreedom * ratio * ratio > ChiSquared.InvCDF(sample.DegreesOfFreedom, 1 - ScatterSignificance);
    }
}
