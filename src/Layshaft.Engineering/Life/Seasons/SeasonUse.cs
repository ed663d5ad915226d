namespace Layshaft.Engineering.Life;

/// <summary>A unit's use at a date.</summary>
/// <param name="Date">Date of the reading.</param>
/// <param name="Amount">Use by then, in the measure of the unit.</param>
public readonly record struct UseReading(DateOnly Date, double Amount);

/// <summary>What a unit ran in one season.</summary>
/// <param name="Season">The season.</param>
/// <param name="Amount">Use in it, in the measure of the unit.</param>
/// <param name="ActiveMonths">Months of it that the readings cover, in mean months.</param>
public sealed record SeasonTotal(Season Season, double Amount, double ActiveMonths);

/// <summary>How much a unit is used, season by season.</summary>
/// <param name="Measure">What use is counted in.</param>
/// <param name="Calendar">The months in which it is run.</param>
/// <param name="Seasons">Its seasons in order; those without use included.</param>
public sealed record SeasonUse(UseMeasure Measure, SeasonCalendar Calendar, IReadOnlyList<SeasonTotal> Seasons)
{
    /// <summary>
    /// Mean use per month in season over those seasons in which the unit was run at all (a year laid up does not make the
    /// next one shorter); <c>null</c> when nothing was run or no month in season is covered.
    /// </summary>
    public double? MeanPerActiveMonth
    {
        get
        {
            var run = Seasons.Where(season => season.Amount > 0).ToArray();
            var months = run.Sum(season => season.ActiveMonths);
            return months > 0 ? run.Sum(season => season.Amount) / months : null;
        }
    }

    /// <summary>
    /// Use per month in season of the quietest and of the busiest season that was run. A season of which less than a month
    /// is covered says too little and is passed over; <c>null</c> when none is left.
    /// </summary>
    public (double Quietest, double Busiest)? RatesPerActiveMonth
    {
        get
        {
            double[] rates = [.. Seasons.Where(season => season.Amount > 0 && season.ActiveMonths >= 1).Select(season => season.Amount / season.ActiveMonths)];
            return rates.Length > 0 ? (rates.Min(), rates.Max()) : null;
        }
    }

    /// <summary>Spreads the use between readings evenly over the days in season between them.</summary>
    /// <param name="measure">What use is counted in.</param>
    /// <param name="readings">The unit's use at dates, in any order; a reading that goes back is left out (the ledger reports it).</param>
    /// <param name="calendar">The months in which it is run.</param>
    /// <returns>The seasons. Use between two readings with no day in season between them goes to the season of the later one.</returns>
    public static SeasonUse Of(UseMeasure measure, IEnumerable<UseReading> readings, SeasonCalendar calendar)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(calendar);
        var amounts = new SortedDictionary<int, (Season Season, double Amount, double Days)>();
        UseReading? before = null;
        foreach (var reading in readings.OrderBy(reading => reading.Date).ThenBy(reading => reading.Amount))
        {
            if (before is not { } last)
            {
                before = reading;
                continue;
            }

            if (reading.Amount < last.Amount)
            {
                continue;
            }

            Spread(amounts, calendar, last, reading);
            before = reading;
        }

        return new SeasonUse(measure, calendar,
            [.. amounts.Values.Select(sum => new SeasonTotal(sum.Season, sum.Amount, sum.Days / SeasonCalendar.DaysPerMonth))]);
    }

    /// <summary>The date by which a unit will have run a further amount at its mean use.</summary>
    /// <param name="from">Date to count from.</param>
    /// <param name="amount">Further use; less than nothing counts as nothing.</param>
    /// <returns>The date, or <c>null</c> when the mean use is unknown or the date lies more than a hundred years ahead.</returns>
    public DateOnly? DateAfter(DateOnly from, double amount) => MeanPerActiveMonth is { } rate
        ? Calendar.After(from, Math.Max(0, amount) / rate * SeasonCalendar.DaysPerMonth)
        : null;

    /// <summary>The dates between which a unit will have run a further amount: as in its busiest season, and as in its quietest.</summary>
    /// <param name="from">Date to count from.</param>
    /// <param name="amount">Further use; less than nothing counts as nothing.</param>
    /// <returns>Earliest and latest date, each <c>null</c> when it is unknown or more than a hundred years ahead.</returns>
    public (DateOnly? Earliest, DateOnly? Latest) DatesAfter(DateOnly from, double amount)
    {
        if (RatesPerActiveMonth is not { } rates)
        {
            return (null, null);
        }

        var days = Math.Max(0, amount) * SeasonCalendar.DaysPerMonth;
        return (Calendar.After(from, days / rates.Busiest), Calendar.After(from, days / rates.Quietest));
    }

    private static void Spread(
        SortedDictionary<int, (Season Season, double Amount, double Days)> amounts, SeasonCalendar calendar, UseReading from, UseReading to)
    {
        var ran = to.Amount - from.Amount;
        var days = calendar.ActiveDays(from.Date, to.Date);
        for (var (day, end) = (from.Date.DayNumber, to.Date.DayNumber); day < end;)
        {
            var (next, isActive) = calendar.Alike(day + 1, end);
            if (isActive)
            {
                Add(calendar.SeasonOf(DateOnly.FromDayNumber(next)), ran * (next - day) / days, next - day);
            }

            day = next;
        }

        if (days == 0)
        {
            Add(calendar.SeasonOf(to.Date), ran, 0);
        }

        void Add(Season season, double amount, double day)
        {
            amounts.TryGetValue(season.FirstYear, out var sum);
            amounts[season.FirstYear] = (season, sum.Amount + amount, sum.Days + day);
        }
    }
}
