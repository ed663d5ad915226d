namespace Layshaft.Engineering.Measurement;

/// <summary>
/// What a part may lose between new and its wear limit, as plain numbers of one unit. New may be a band (a drawing tolerance);
/// then its middle counts as new and its width adds to the uncertainty of the share used.
/// </summary>
public sealed record WearAllowance
{
    /// <summary>Sets up an allowance.</summary>
    /// <param name="newLow">Least value of a new part.</param>
    /// <param name="newHigh">Greatest value of a new part; the same as <paramref name="newLow"/> where one value is stated.</param>
    /// <param name="limit">The wear limit, outside the band of new.</param>
    /// <exception cref="ArgumentException">A value is not finite, the band is upside down, or the limit lies in the band of new.</exception>
    public WearAllowance(double newLow, double newHigh, double limit)
    {
        if (!double.IsFinite(newLow) || !double.IsFinite(newHigh) || !double.IsFinite(limit))
        {
            throw new ArgumentException("new and limit must be finite numbers");
        }

        if (newLow > newHigh)
        {
            throw new ArgumentException($"the band of new runs from {newLow:R} to {newHigh:R}: give the smaller value first");
        }

        if (limit >= newLow && limit <= newHigh)
        {
            throw new ArgumentException($"the limit {limit:R} lies within the band of new {newLow:R} to {newHigh:R}: there is nothing to wear");
        }

        (NewLow, NewHigh, Limit) = (newLow, newHigh, limit);
    }

    /// <summary>Least value of a new part.</summary>
    public double NewLow { get; }

    /// <summary>Greatest value of a new part.</summary>
    public double NewHigh { get; }

    /// <summary>The wear limit.</summary>
    public double Limit { get; }

    /// <summary>Middle of the band of new.</summary>
    public double New => NewLow + ((NewHigh - NewLow) / 2);

    /// <summary>Upper where wear makes the value grow towards the limit, lower where it shrinks.</summary>
    public LimitSense Sense => Limit > NewHigh ? LimitSense.Upper : LimitSense.Lower;

    /// <summary>Limit minus new: negative where wear makes the value shrink.</summary>
    public double Allowance => Limit - New;

    /// <summary>Decides whether a measured part keeps the limit.</summary>
    /// <param name="measured">The measured value.</param>
    /// <returns>The decision with its guard band.</returns>
    public LimitDecision Decide(MeasuredValue measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return LimitDecision.Of(measured.Value, measured.ExpandedUncertainty, Limit, Sense, measured.Resolution);
    }

    /// <summary>
    /// Share of the allowance that is used: 0 new, 1 at the limit, beyond 1 past it; below 0 for a part better than the middle of new.
    /// Uncertainty by the law of propagation (JCGM 100:2008, 5.1.2), the band of new taken as rectangular.
    /// </summary>
    /// <param name="measured">The measured value.</param>
    /// <returns>The share, without unit, with its uncertainty.</returns>
    public MeasuredValue ShareUsed(MeasuredValue measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        var budget = measured.Budget.Scaled(1 / Allowance);
        if (NewHigh > NewLow)
        {
            // ∂share/∂new = (value − limit)/allowance²: the width of new matters less the nearer the limit is.
            var sensitivity = Math.Abs((measured.Value - Limit) / (Allowance * Allowance));
            budget = budget.With(UncertaintyComponent.Rectangular("tolerance of new", (NewHigh - NewLow) / 2 * sensitivity));
        }

        return measured with
        {
            Value = (measured.Value - New) / Allowance,
            Budget = budget,
            StandardDeviation = measured.StandardDeviation / Math.Abs(Allowance),
            Resolution = measured.Resolution / Math.Abs(Allowance),
        };
    }
}
