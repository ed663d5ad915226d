namespace Layshaft.Engineering.Life;

/// <summary>The months in which a unit is run. A last month before the first one means a season over the turn of the year.</summary>
public sealed record SeasonCalendar
{
    /// <summary>Mean length of a month in days (Gregorian year 365.2425 / 12).</summary>
    public const double DaysPerMonth = 365.2425 / 12;

    private const int LongestSearchInDays = 366 * 100;

    /// <summary>Sets the months.</summary>
    /// <param name="firstMonth">First month of the season, 1 to 12.</param>
    /// <param name="lastMonth">Last month of the season, 1 to 12.</param>
    /// <exception cref="ArgumentOutOfRangeException">A month is not 1 to 12.</exception>
    public SeasonCalendar(int firstMonth, int lastMonth)
    {
        if (firstMonth is < 1 or > 12)
        {
            throw new ArgumentOutOfRangeException(nameof(firstMonth), firstMonth, "A month is 1 to 12.");
        }

        if (lastMonth is < 1 or > 12)
        {
            throw new ArgumentOutOfRangeException(nameof(lastMonth), lastMonth, "A month is 1 to 12.");
        }

        FirstMonth = firstMonth;
        LastMonth = lastMonth;
    }

    /// <summary>A unit that is run all the year.</summary>
    public static SeasonCalendar AllYear { get; } = new(1, 12);

    /// <summary>First month of the season.</summary>
    public int FirstMonth { get; }

    /// <summary>Last month of the season.</summary>
    public int LastMonth { get; }

    /// <summary>Whether a day lies in a season.</summary>
    /// <param name="day">The day.</param>
    /// <returns><c>true</c> in the season.</returns>
    public bool IsActive(DateOnly day) => FirstMonth <= LastMonth
        ? day.Month >= FirstMonth && day.Month <= LastMonth
        : day.Month >= FirstMonth || day.Month <= LastMonth;

    /// <summary>The season that a day belongs to; a day out of season belongs to the season before it.</summary>
    /// <param name="day">The day.</param>
    /// <returns>The season.</returns>
    public Season SeasonOf(DateOnly day)
    {
        var firstYear = day.Month >= FirstMonth ? day.Year : day.Year - 1;
        return new Season(firstYear, FirstMonth <= LastMonth ? firstYear : firstYear + 1);
    }

    /// <summary>The first day of a season.</summary>
    /// <param name="season">A season of this calendar.</param>
    public DateOnly FirstDay(Season season) => new(season.FirstYear, FirstMonth, 1);

    /// <summary>The last day of a season.</summary>
    /// <param name="season">A season of this calendar.</param>
    public DateOnly LastDay(Season season) => new DateOnly(season.LastYear, LastMonth, 1).AddMonths(1).AddDays(-1);

    /// <summary>Every season from that of one day to that of another, in order; none when the second is earlier.</summary>
    /// <param name="from">A day of the first season.</param>
    /// <param name="to">A day of the last season.</param>
    public IEnumerable<Season> Between(DateOnly from, DateOnly to)
    {
        var (first, last) = (SeasonOf(from), SeasonOf(to));
        for (var year = first.FirstYear; year <= last.FirstYear; year++)
        {
            yield return new Season(year, year + first.LastYear - first.FirstYear);
        }
    }

    /// <summary>Number of days in season after one date up to and including another.</summary>
    /// <param name="after">The first date, not counted.</param>
    /// <param name="upTo">The last date, counted.</param>
    /// <returns>Number of days; 0 when <paramref name="upTo"/> is not later.</returns>
    public int ActiveDays(DateOnly after, DateOnly upTo)
    {
        var count = 0;
        for (var (day, end) = (after.DayNumber, upTo.DayNumber); day < end;)
        {
            var (next, isActive) = Alike(day + 1, end);
            count += isActive ? next - day : 0;
            day = next;
        }

        return count;
    }

    /// <summary>The date by which a number of days in season have passed.</summary>
    /// <param name="from">Date to count from, not counted itself.</param>
    /// <param name="activeDays">Days in season to let pass; a part of a day is dropped, so that the date is never late.</param>
    /// <returns>The date, <paramref name="from"/> itself for less than one day, or <c>null</c> when it lies more than a hundred years ahead.</returns>
    public DateOnly? After(DateOnly from, double activeDays)
    {
        if (!(activeDays < LongestSearchInDays))
        {
            return null;
        }

        var left = (int)Math.Floor(activeDays);
        var day = from.DayNumber;
        var end = (int)Math.Min((long)day + LongestSearchInDays, DateOnly.MaxValue.DayNumber);
        while (left > 0)
        {
            if (day >= end)
            {
                return null;
            }

            var (next, isActive) = Alike(day + 1, end);
            next = isActive ? Math.Min(next, day + left) : next;
            left -= isActive ? next - day : 0;
            day = next;
        }

        return DateOnly.FromDayNumber(day);
    }

    // Days of one month are all in season or all out of it: the last of them from a day on, no later than an end.
    internal (int Last, bool IsActive) Alike(int dayNumber, int end)
    {
        var day = DateOnly.FromDayNumber(dayNumber);
        return (Math.Min(end, dayNumber + DateTime.DaysInMonth(day.Year, day.Month) - day.Day), IsActive(day));
    }
}
