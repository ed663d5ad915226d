namespace Layshaft.Engineering.Life;

/// <summary>
/// The trend of a part with too few readings of its own: its slope is drawn towards the rate of the other units of the type, the more so the fewer readings
/// it has (a linear mixed model with random slopes, each part's own height left free).
/// </summary>
public static class PooledTrend
{
    /// <summary>Fits a part's readings.</summary>
    /// <param name="readings">The readings, at least one, by usage since new.</param>
    /// <param name="limit">New value and limit, both known, in the unit of the readings.</param>
    /// <param name="others">How the other units of the type wear.</param>
    /// <param name="choices">Level, usage now and the uncertainty of a reading.</param>
    /// <returns>The trend; <c>null</c> if there is no line, or if nothing says how far readings scatter.</returns>
    public static WearTrendLine? Of(IReadOnlyList<WearReading> readings, WearLimit limit, TypeWear others, WearTrendChoices choices)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(others);
        ArgumentNullException.ThrowIfNull(choices);
        var allowance = limit.ToWear(limit.Limit);
        var scatter = Math.Max(choices.ReadingUncertainty, allowance * others.Scatter ?? 0);
        WearReading[] wears = [.. readings.Select(reading => reading with { Value = limit.ToWear(reading.Value) })];
        return readings.Count == 0 || others.Rates.Count == 0 || scatter <= 0
            ? null
            : new WearTrendLine
            {
                Curves = [.. others.Rates.Select(rate => Curve(wears, rate, allowance, others.Units, scatter, choices.Level))],
                Limit = limit,
                Level = choices.Level,
                UseNow = choices.UseNow ?? readings.Max(reading => reading.Use),
                OtherUnits = others.Units,
            };
    }

    private static WearCurve Curve(WearReading[] readings, TypeRate rate, double allowance, int units, double scatter, double level)
    {
        double[] uses = [.. readings.Select(reading => Math.Pow(reading.Use, rate.Power))];
        var (x, y) = (uses.Average(), readings.Average(reading => reading.Value));
        var own = uses.Sum(use => (use - x) * (use - x));
        var product = uses.Zip(readings, (use, reading) => (use - x) * (reading.Value - y)).Sum();

        // Rates differ by factors; the bounds of a line need a standard deviation: the one that gives the same upper bound of the rate.
        var factor = Quantiles.StudentT(0.5 + level / 2, units - 1);
        var mean = allowance * Math.Exp(rate.LogMean);
        var spread = mean * Math.Max(1e-6, Math.Exp(factor * rate.LogDeviation * Math.Sqrt(1 + 1.0 / units)) - 1) / factor;
        var prior = scatter * scatter / (spread * spread);
        return new WearCurve(rate.Power, 1, new LinearFit
        {
            Count = readings.Length,
            ThroughOrigin = false,
            CentreX = x,
            CentreY = y,
            Slope = (product + prior * mean) / (own + prior),
            Intercept = y - (product + prior * mean) / (own + prior) * x,
            SumOfSquaresX = own + prior,
            ResidualSumOfSquares = 0,
            RegressionSumOfSquares = 0,
            ReadingUncertainty = scatter,
            PooledFreedom = units - 1,
        });
    }
}
