namespace Layshaft.Engineering.Life;

/// <summary>A wear trend with what it allows to be said about the limit.</summary>
public sealed record WearTrendLine : WearTrendResult
{
    /// <summary>
    /// The curves that the readings allow, of wear (growing, from 0 where the new value is known) against usage; the first is the one to show. Bounds hold
    /// for every one of them.
    /// </summary>
    public required IReadOnlyList<WearCurve> Curves { get; init; }

    /// <summary>New value and limit.</summary>
    public required WearLimit Limit { get; init; }

    /// <summary>Two-sided level of the intervals.</summary>
    public required double Level { get; init; }

    /// <summary>The part's use now.</summary>
    public required double UseNow { get; init; }

    /// <summary>Number of other units of the type whose wear the slope rests on; 0 for a trend from the part's own readings alone.</summary>
    public int OtherUnits { get; init; }

    /// <summary>The curve to show: the straight line if the readings allow it, else the one that fits best.</summary>
    public WearCurve Curve => Curves[0];

    /// <summary>Usage at which the curve reaches the limit.</summary>
    public double UseAtLimit => Curve.CrossingOf(Limit.ToWear(Limit.Limit), Level)!.Estimate;

    /// <summary>
    /// Between which uses a reading is to be expected at the limit. Open above: the readings do not exclude that wear has
    /// all but stopped. Open below as well: they do not exclude that the limit is reached already.
    /// </summary>
    public Bounds UseAtLimitBounds
    {
        get
        {
            var wear = Limit.ToWear(Limit.Limit);
            LineCrossing?[] crossings = [.. Curves.Select(curve => curve.CrossingOf(wear, Level))];
            return new Bounds(
                Level,
                crossings.Any(c => c is { Bounds.Lower: null }) ? null : crossings.Min(c => c?.Bounds.Lower),
                crossings.Any(c => c?.Bounds.Upper is null) ? null : crossings.Max(c => c!.Bounds.Upper));
        }
    }

    /// <summary>Use left to the limit by the curve; 0 once it is reached.</summary>
    public double Remaining => Math.Max(0, UseAtLimit - UseNow);

    /// <summary>Bounds of the use left; the lower end is 0 at least.</summary>
    public Bounds RemainingBounds => new(Level, LookAgainWithin, UseAtLimitBounds.Upper is { } upper ? Math.Max(0, upper - UseNow) : null);

    /// <summary>Whether the curve has reached the limit by now.</summary>
    public bool LimitReached => UseAtLimit <= UseNow;

    /// <summary>
    /// Use from now within which to look again: when a reading at the limit first becomes possible at this level. 0 means now.
    /// </summary>
    public double LookAgainWithin => UseAtLimitBounds.Lower is { } lower ? Math.Max(0, lower - UseNow) : 0;

    /// <summary>The value on the curve at a use.</summary>
    /// <param name="use">The part's use.</param>
    /// <returns>A value in the unit of the readings.</returns>
    public double ValueAt(double use) => Limit.ToValue(Curve.At(use));

    /// <summary>Where the next reading is to be expected at a use.</summary>
    /// <param name="use">The part's use.</param>
    /// <returns>Bounds in the unit of the readings; open where one of the curves leaves them open.</returns>
    public Bounds PredictionAt(double use)
    {
        Bounds[] wears = [.. Curves.Select(curve => curve.PredictionAt(use, Level))];
        double? low = wears.Any(w => w.Lower is null) ? null : Limit.ToValue(wears.Min(w => w.Lower!.Value));
        double? high = wears.Any(w => w.Upper is null) ? null : Limit.ToValue(wears.Max(w => w.Upper!.Value));
        return Limit.Grows ? new Bounds(Level, low, high) : new Bounds(Level, high, low);
    }
}
