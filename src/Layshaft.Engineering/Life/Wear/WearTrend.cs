namespace Layshaft.Engineering.Life;

/// <summary>Fits a part's wear against its use.</summary>
public static class WearTrend
{
    // Readings that are all alike can give a slope of a last digit: a limit reached in 10^17 hours is none.
    private const double Rounding = 1e-12;

    /// <summary>Fits a part's readings since it was fitted: a straight line, or wear by a power of usage where that does not fit.</summary>
    /// <param name="readings">The readings, finite, in any order.</param>
    /// <param name="limit">New value and limit, in the unit of the readings.</param>
    /// <param name="choices">How to work it out; <c>null</c> for the usual way.</param>
    /// <returns>
    /// A <see cref="WearTrendLine"/>, or a <see cref="WearTrendUnsaid"/> with the reason. A line needs three readings, or two
    /// when it is held to the known new value.
    /// </returns>
    /// <exception cref="ArgumentException">
    /// A reading is not finite or its use negative, or the line is to be held to a new value that is not known.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The level or the reading's uncertainty is out of range.</exception>
    public static WearTrendResult Of(IReadOnlyList<WearReading> readings, WearLimit limit, WearTrendChoices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(limit);
        choices ??= new WearTrendChoices();
        Check(readings, limit, choices);
        var ordered = readings.OrderBy(reading => reading.Use).ToArray();
        double[] uses = [.. ordered.Select(reading => reading.Use)];
        double[] wears = [.. ordered.Select(reading => limit.ToWear(reading.Value))];
        if (ReasonBefore(uses, choices.ThroughNewValue) is { } reason)
        {
            return Unsaid(reason, uses, wears);
        }

        var fit = (choices.ThroughNewValue ? LinearRegression.FitThroughOrigin(uses, wears) : LinearRegression.Fit(uses, wears))
            with
        { ReadingUncertainty = choices.ReadingUncertainty };
        if (fit.Slope * (uses[^1] - uses[0]) <= Rounding * wears.Max(Math.Abs))
        {
            var shrinks = fit.SlopeBounds(choices.Level).Upper < 0;
            return Unsaid(shrinks ? WearTrendUnsaidReason.Shrinking : WearTrendUnsaidReason.Flat, uses, wears);
        }

        return WearCurves.Allowed(uses, wears, choices) is { Count: > 0 } curves
            ? new WearTrendLine { Curves = curves, Limit = limit, Level = choices.Level, UseNow = choices.UseNow ?? uses[^1] }
            : Unsaid(WearTrendUnsaidReason.Bent, uses, wears);
    }

    private static WearTrendUnsaidReason? ReasonBefore(double[] uses, bool throughNewValue)
    {
        // A reading at no use adds nothing to a line that is held there.
        var telling = throughNewValue ? uses.Count(use => use > 0) : uses.Length;
        return (uses.Length, telling) switch
        {
            (0, _) => WearTrendUnsaidReason.NoReading,
            (1, _) => WearTrendUnsaidReason.OneReading,
            (2, _) when !throughNewValue => WearTrendUnsaidReason.TwoReadings,
            (_, 0) => WearTrendUnsaidReason.OneUse,
            (_, 1) when throughNewValue => WearTrendUnsaidReason.OneReading,
            _ when !throughNewValue && uses[0] == uses[^1] => WearTrendUnsaidReason.OneUse,
            _ => null,
        };
    }

    private static WearTrendUnsaid Unsaid(WearTrendUnsaidReason reason, double[] uses, double[] wears) =>
        new(reason, uses.Length, uses.Length > 1 && uses[^1] > uses[0] ? (wears[^1] - wears[0]) / (uses[^1] - uses[0]) : null);

    private static void Check(IReadOnlyList<WearReading> readings, WearLimit limit, WearTrendChoices choices)
    {
        Bounds.CheckLevel(choices.Level);
        if (!(choices.ReadingUncertainty >= 0 && double.IsFinite(choices.ReadingUncertainty)))
        {
            throw new ArgumentOutOfRangeException(nameof(choices), choices.ReadingUncertainty, "A reading's standard uncertainty is 0 or more.");
        }

        if (choices.ThroughNewValue && limit.NewValue is null)
        {
            throw new ArgumentException("The line cannot be held to a new value that is not known.", nameof(choices));
        }

        if (readings.Any(reading => !(reading.Use >= 0 && double.IsFinite(reading.Use) && double.IsFinite(reading.Value))))
        {
            throw new ArgumentException("Readings must be finite, their use 0 or more.", nameof(readings));
        }
    }
}
