namespace Layshaft.Engineering.Life;

/// <summary>A straight-line wear trend with what it allows to be said about the limit.</summary>
public sealed record WearTrendLine : WearTrendResult
{
    /// <summary>The fitted line of wear (growing, from 0 where the new value is known) against use.</summary>
    public required LinearFit Fit { get; init; }

    /// <summary>New value and limit.</summary>
    public required WearLimit Limit { get; init; }

    /// <summary>Two-sided level of the intervals.</summary>
    public required double Level { get; init; }

    /// <summary>The part's use now.</summary>
    public required double UseNow { get; init; }

    /// <summary>Wear per unit of use, greater than 0.</summary>
    public double Rate => Fit.Slope;

    /// <summary>Use at which the line reaches the limit.</summary>
    public double UseAtLimit => Crossing.Estimate;

    /// <summary>
    /// Between which uses a reading is to be expected at the limit. Open above: the readings do not exclude that wear has
    /// all but stopped. Open below as well: they do not exclude that the limit is reached already.
    /// </summary>
    public Bounds UseAtLimitBounds => Crossing.Bounds;

    /// <summary>Use left to the limit by the line; 0 once it is reached.</summary>
    public double Remaining => Math.Max(0, UseAtLimit - UseNow);

    /// <summary>Bounds of the use left; the lower end is 0 at least.</summary>
    public Bounds RemainingBounds => new(Level, LookAgainWithin, UseAtLimitBounds.Upper is { } upper ? Math.Max(0, upper - UseNow) : null);

    /// <summary>Whether the line has reached the limit by now.</summary>
    public bool LimitReached => UseAtLimit <= UseNow;

    /// <summary>
    /// Use from now within which to look again: when a reading at the limit first becomes possible at this level. 0 means now.
    /// </summary>
    public double LookAgainWithin => UseAtLimitBounds.Lower is { } lower ? Math.Max(0, lower - UseNow) : 0;

    /// <summary>The value on the line at a use.</summary>
    /// <param name="use">The part's use.</param>
    /// <returns>A value in the unit of the readings.</returns>
    public double ValueAt(double use) => Limit.ToValue(Fit.At(use));

    /// <summary>Where the next reading is to be expected at a use.</summary>
    /// <param name="use">The part's use.</param>
    /// <returns>Bounds in the unit of the readings.</returns>
    public Bounds PredictionAt(double use)
    {
        var wear = Fit.IntervalAt(use, Level, IntervalKind.NextReading);
        double? low = wear.Lower is { } lower ? Limit.ToValue(lower) : null;
        double? high = wear.Upper is { } upper ? Limit.ToValue(upper) : null;
        return Limit.Grows ? new Bounds(Level, low, high) : new Bounds(Level, high, low);
    }

    // The slope is greater than 0, so there is a crossing.
    private LineCrossing Crossing => Fit.CrossingOf(Limit.ToWear(Limit.Limit), Level, IntervalKind.NextReading)!;
}
