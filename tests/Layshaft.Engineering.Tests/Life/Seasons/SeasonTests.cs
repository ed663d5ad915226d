using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Seasons;

public class SeasonTests
{
    private static readonly SeasonCalendar Summer = new(4, 9);
    private static readonly SeasonCalendar Winter = new(10, 3);

    [Theory]
    [InlineData("2025-04-01", true, "2025")]
    [InlineData("2025-09-30", true, "2025")]
    [InlineData("2025-10-01", false, "2025")]
    [InlineData("2025-03-31", false, "2024")]
    public void A_summer_season_lies_in_one_year(string day, bool active, string season)
    {
        var date = DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(active, Summer.IsActive(date));
        Assert.Equal(season, Summer.SeasonOf(date).ToString());
    }

    [Theory]
    [InlineData("2025-10-01", true, "2025/26")]
    [InlineData("2026-03-31", true, "2025/26")]
    [InlineData("2026-04-01", false, "2025/26")]
    [InlineData("1999-12-31", true, "1999/00")]
    public void A_winter_season_is_named_by_both_years(string day, bool active, string season)
    {
        var date = DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(active, Winter.IsActive(date));
        Assert.Equal(season, Winter.SeasonOf(date).ToString());
    }

    [Fact]
    public void Days_in_season_are_those_that_a_walk_day_by_day_counts() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[700_000, 780_000], Gen.Int[-5, 1200]).Sample((first, last, number, days) =>
        {
            var calendar = new SeasonCalendar(first, last);
            var from = DateOnly.FromDayNumber(number);
            var walked = Enumerable.Range(number + 1, Math.Max(0, days)).Count(n => calendar.IsActive(DateOnly.FromDayNumber(n)));
            Assert.Equal(walked, calendar.ActiveDays(from, from.AddDays(days)));

            // The first day by which so many have passed: that day is in season itself.
            var reached = calendar.After(from, walked)!.Value;
            Assert.Equal(walked, calendar.ActiveDays(from, reached));
            Assert.True(walked == 0 ? reached == from : calendar.IsActive(reached));
        });

    [Fact]
    public void Six_months_of_twelve_hours_are_two_hours_a_month()
    {
        // 183 days in season.
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2024, 1, 10), 100), new(new(2025, 1, 10), 112)], Summer);
        var season = Assert.Single(use.Seasons);
        Assert.Equal((new Season(2024, 2024), 12.0), (season.Season, Math.Round(season.Amount, 9)));
        Assert.Equal(12 / (183 / SeasonCalendar.DaysPerMonth), use.MeanPerActiveMonth!.Value, 1e-9);
    }

    [Fact]
    public void A_year_laid_up_does_not_thin_the_mean()
    {
        UseReading[] readings = [new(new(2022, 1, 1), 0), new(new(2023, 1, 1), 12), new(new(2024, 1, 1), 12), new(new(2025, 1, 1), 24)];
        var use = SeasonUse.Of(UseMeasure.Hours, readings, Summer);
        Assert.Equal([12.0, 0.0, 12.0], use.Seasons.Select(season => Math.Round(season.Amount, 9)));
        Assert.Equal(24 / (366 / SeasonCalendar.DaysPerMonth), use.MeanPerActiveMonth!.Value, 1e-9);
    }

    [Fact]
    public void The_dates_by_which_an_amount_is_run_follow_from_the_busiest_and_the_quietest_season()
    {
        // 183 days in season each year: an hour a day in 2024, half an hour a day in 2025.
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2024, 1, 1), 0), new(new(2025, 1, 1), 183), new(new(2026, 1, 1), 274.5)], Summer);
        var (earliest, latest) = use.DatesAfter(new(2026, 3, 31), 10.0001);
        Assert.Equal(new DateOnly(2026, 4, 10), earliest);
        Assert.Equal(new DateOnly(2026, 4, 20), latest);
        Assert.True(earliest <= use.DateAfter(new(2026, 3, 31), 10.0001) && use.DateAfter(new(2026, 3, 31), 10.0001) <= latest);
    }

    [Fact]
    public void A_season_of_which_a_few_days_are_covered_sets_no_pace()
    {
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2024, 9, 20), 0), new(new(2024, 9, 30), 50)], Summer);
        Assert.Null(use.RatesPerActiveMonth);
        Assert.Equal((null, null), use.DatesAfter(new(2025, 1, 1), 5));
    }

    [Fact]
    public void Every_day_lies_between_the_first_day_of_its_season_and_that_of_the_next() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[700_000, 780_000]).Sample((first, last, number) =>
        {
            var calendar = new SeasonCalendar(first, last);
            var day = DateOnly.FromDayNumber(number);
            var season = calendar.SeasonOf(day);
            Assert.True(calendar.FirstDay(season) <= day);
            Assert.True(day < calendar.FirstDay(season).AddYears(1));
            Assert.Equal(calendar.IsActive(day), day <= calendar.LastDay(season));
            Assert.Equal(season, calendar.SeasonOf(calendar.LastDay(season)));
            Assert.Equal(season, Assert.Single(calendar.Between(day, day)));
        });

    [Fact]
    public void The_winter_is_skipped_when_use_is_turned_into_a_date()
    {
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2024, 1, 1), 0), new(new(2025, 1, 1), 183)], Summer); // an hour a day
        Assert.Equal(new DateOnly(2025, 9, 30), use.DateAfter(new(2025, 9, 20), 10.0001));
        Assert.Equal(new DateOnly(2026, 4, 5), use.DateAfter(new(2025, 9, 20), 15.0001));
        Assert.Equal(new DateOnly(2025, 9, 20), use.DateAfter(new(2025, 9, 20), -3));
    }

    [Fact]
    public void Use_between_two_jobs_out_of_season_goes_to_the_season_of_the_later_one()
    {
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2024, 11, 1), 0), new(new(2024, 12, 1), 3)], Summer);
        Assert.Equal((new Season(2024, 2024), 3.0, 0.0), (use.Seasons[0].Season, use.Seasons[0].Amount, use.Seasons[0].ActiveMonths));
        Assert.Null(use.MeanPerActiveMonth);
        Assert.Null(use.DateAfter(new(2025, 1, 1), 5));
    }

    [Fact]
    public void A_date_beyond_a_hundred_years_is_not_given()
    {
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2024, 1, 1), 0), new(new(2025, 1, 1), 1)], Summer);
        Assert.Null(use.DateAfter(new(2025, 1, 1), 1e6));
        Assert.Null(use.DateAfter(new(2025, 1, 1), double.PositiveInfinity));
        Assert.Null(use.DateAfter(DateOnly.MaxValue, 1));
    }

    [Fact]
    public void Seasons_add_up_to_the_use_between_first_and_last_reading()
    {
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], Gen.Select(Gen.Int[0, 3000], Gen.Double[0, 40]).Array[2, 10]).Sample((first, last, steps) =>
        {
            var amount = 0.0;
            var readings = steps.OrderBy(step => step.Item1)
                .Select(step => new UseReading(new DateOnly(2018, 5, 5).AddDays(step.Item1), amount += step.Item2)).ToArray();
            var use = SeasonUse.Of(UseMeasure.Hours, readings, new SeasonCalendar(first, last));
            Assert.Equal(readings[^1].Amount - readings[0].Amount, use.Seasons.Sum(season => season.Amount), 1e-6);
        }, iter: 50);
    }

    [Fact]
    public void A_month_outside_the_year_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeasonCalendar(0, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeasonCalendar(5, 13));
    }
}
