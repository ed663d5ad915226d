namespace Layshaft.Engineering.Life;

/// <summary>How fast a part wears against the median of the other units of its type.</summary>
/// <param name="Ratio">Its rate over the median.</param>
/// <param name="Bounds">Bounds of the ratio, at 95 %.</param>
public sealed record RelativeRate(double Ratio, Bounds Bounds)
{
    private const double Level = 0.95;

    // Above this relative uncertainty of its own rate the logarithm no longer follows the readings.
    private const double MostUncertain = 0.3;

    /// <summary>Whether the ratio differs from 1 by more than its uncertainty, also when both are rounded to a tenth.</summary>
    public bool Differs => Math.Floor(Bounds.Lower!.Value * 10) / 10 > 1 || Math.Ceiling(Bounds.Upper!.Value * 10) / 10 < 1;

    /// <summary>
    /// Compares a part with the others. The median is taken as uncertain by 1.25 standard deviations over √n (that of normal data), the part's own rate by
    /// the scatter of its readings.
    /// </summary>
    /// <param name="readings">The part's readings; usage since new, and share of the wear allowance used.</param>
    /// <param name="others">The other units of the type.</param>
    /// <param name="readingUncertainty">Standard uncertainty of a reading, a share of the wear allowance; 0 if unknown.</param>
    /// <returns>The comparison; <c>null</c> if the part's own rate or how far readings scatter is not known well enough.</returns>
    public static RelativeRate? Of(IReadOnlyList<WearReading> readings, TypeWear others, double readingUncertainty)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(others);
        var scatter = Math.Max(readingUncertainty, others.Scatter ?? 0);
        if (others.Rates.Count == 0 || scatter <= 0 || !readings.Any(reading => reading.Use > 0))
        {
            return null;
        }

        double[] uses = [.. readings.Select(reading => Math.Pow(reading.Use, others.Rates[0].Power))];
        var squares = uses.Sum(use => use * use);
        var rate = uses.Zip(readings, (use, reading) => use * (reading.Value - others.Height)).Sum() / squares;
        var own = scatter / Math.Sqrt(squares) / rate;
        if (!(rate > 0 && own <= MostUncertain))
        {
            return null;
        }

        var spread = others.Rates[0].LogDeviation;
        var variance = own * own + Math.PI / 2 * spread * spread / others.Units + TypeWear.LogStep * TypeWear.LogStep / 12;
        var (log, half) = (Math.Log(rate) - others.LogMedian, Quantiles.StudentT(0.5 + Level / 2, others.Units - 1) * Math.Sqrt(variance));
        return new RelativeRate(Math.Exp(log), new Bounds(Level, Math.Exp(log - half), Math.Exp(log + half)));
    }
}
