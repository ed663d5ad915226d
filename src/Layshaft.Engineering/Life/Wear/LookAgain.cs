namespace Layshaft.Engineering.Life;

/// <summary>When to look at a part again, in use and in dates.</summary>
/// <param name="Within">Use from now within which to look; 0 means now.</param>
/// <param name="By">Date by which that use is run at the unit's mean use; <c>null</c> when its use by season is unknown or the date is beyond reckoning.</param>
/// <param name="LimitExpected">Date at which the trend itself reaches the limit, likewise.</param>
/// <param name="LimitAtLatest">Date by which the limit is reached at the latest, likewise; <c>null</c> also when that side is open.</param>
public sealed record LookAgain(double Within, DateOnly? By, DateOnly? LimitExpected, DateOnly? LimitAtLatest)
{
    /// <summary>Date by which that use is run when the unit is used as in its busiest season; <c>null</c> when that is not known.</summary>
    public DateOnly? EarliestBy { get; init; }

    /// <summary>Date by which that use is run when the unit is used as in its quietest season; <c>null</c> when that is not known.</summary>
    public DateOnly? LatestBy { get; init; }

    /// <summary>Turns a trend into dates.</summary>
    /// <param name="trend">The trend.</param>
    /// <param name="use">The use of the unit that the part runs in, in the measure of the trend.</param>
    /// <param name="from">The date at which the part had its <see cref="WearTrendLine.UseNow"/>.</param>
    /// <returns>Use and dates.</returns>
    public static LookAgain Of(WearTrendLine trend, SeasonUse use, DateOnly from)
    {
        ArgumentNullException.ThrowIfNull(trend);
        ArgumentNullException.ThrowIfNull(use);
        var dates = use.DatesAfter(from, trend.LookAgainWithin);
        return new LookAgain(
            trend.LookAgainWithin,
            use.DateAfter(from, trend.LookAgainWithin),
            use.DateAfter(from, trend.Remaining),
            trend.RemainingBounds.Upper is { } latest ? use.DateAfter(from, latest) : null)
        {
            EarliestBy = dates.Earliest,
            LatestBy = dates.Latest,
        };
    }
}
