using CsCheck;
using Layshaft.Engineering.Life;
using Reason = Layshaft.Engineering.Life.WearTrendUnsaidReason;

namespace Layshaft.Engineering.Tests.Life.Wear;

public class WearTrendTests
{
    private static readonly WearReading[] Steady = [new(5, 0.12), new(12, 0.22), new(20, 0.41), new(31, 0.58)];

    private static readonly WearTrendChoices Known = new() { ReadingUncertainty = 0.01 };

    [Fact]
    public void Steady_wear_gives_use_to_the_limit_between_bounds()
    {
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of(Steady, WearLimit.Share, Known));
        Assert.InRange(trend.UseAtLimit, 45, 65);
        Assert.True(trend.UseAtLimitBounds.Lower < trend.UseAtLimit && trend.UseAtLimit < trend.UseAtLimitBounds.Upper);
        Assert.Equal(trend.UseAtLimit - 31, trend.Remaining, 1e-12);
        Assert.Equal(trend.UseAtLimitBounds.Lower!.Value - 31, trend.LookAgainWithin, 1e-12);
        Assert.False(trend.LimitReached);
    }

    [Fact]
    public void The_bounds_are_where_the_prediction_reaches_the_limit()
    {
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of(Steady, WearLimit.Share, new() { Level = 0.9 }));
        Assert.Equal(1, trend.PredictionAt(trend.UseAtLimitBounds.Lower!.Value).Upper!.Value, 1e-9);
        Assert.Equal(1, trend.PredictionAt(trend.UseAtLimitBounds.Upper!.Value).Lower!.Value, 1e-9);
        Assert.Equal(1, trend.ValueAt(trend.UseAtLimit), 1e-12);
    }

    [Fact]
    public void A_thickness_that_shrinks_wears_as_a_share_does()
    {
        var limit = WearLimit.Between(newValue: 8.0, limit: 7.0);
        var share = Assert.IsType<WearTrendLine>(WearTrend.Of(Steady, WearLimit.Share, Known));
        var thickness = Assert.IsType<WearTrendLine>(WearTrend.Of([.. Steady.Select(reading => reading with { Value = 8 - reading.Value })], limit, Known));
        Assert.Equal(share.UseAtLimit, thickness.UseAtLimit, 1e-9);
        Assert.Equal(share.UseAtLimitBounds.Lower!.Value, thickness.UseAtLimitBounds.Lower!.Value, 1e-9);
        Assert.Equal(8 - share.PredictionAt(40).Upper!.Value, thickness.PredictionAt(40).Lower!.Value, 1e-9);
    }

    [Fact]
    public void Held_to_the_new_value_two_readings_are_enough()
    {
        var choices = new WearTrendChoices { ThroughNewValue = true };
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of([new(10, 0.2), new(20, 0.42)], WearLimit.Share, choices));
        Assert.Equal(1, trend.Curve.Fit.DegreesOfFreedom);
        Assert.Equal(0, trend.ValueAt(0));
        Assert.IsType<WearTrendUnsaid>(WearTrend.Of([new(0, 0), new(20, 0.42)], WearLimit.Share, choices));
        Assert.Throws<ArgumentException>(() => WearTrend.Of(Steady, WearLimit.Only(1, grows: true), choices));
    }

    [Fact]
    public void Wear_hidden_in_scatter_leaves_the_late_side_open()
    {
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of([new(5, 0.10), new(10, 0.20), new(15, 0.05), new(20, 0.25)], WearLimit.Share));
        Assert.True(trend.UseAtLimitBounds.IsOpenAbove);
        Assert.False(trend.UseAtLimitBounds.IsOpenBelow);
        Assert.Null(trend.RemainingBounds.Upper);
    }

    [Fact]
    public void Wear_that_may_be_at_its_limit_already_is_looked_at_now()
    {
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of([new(5, 0.2), new(10, 0.9), new(15, 0.3)], WearLimit.Share));
        Assert.True(trend.UseAtLimitBounds is { IsOpenBelow: true, IsOpenAbove: true });
        Assert.Equal(0, trend.LookAgainWithin);
    }

    [Fact]
    public void A_limit_passed_leaves_nothing()
    {
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of(Steady, WearLimit.Share, new() { UseNow = 90 }));
        Assert.True(trend.LimitReached);
        Assert.Equal((0.0, 0.0), (trend.Remaining, trend.LookAgainWithin));
    }

    [Theory]
    [InlineData(Reason.NoReading)]
    [InlineData(Reason.OneReading, 5.0, 0.1)]
    [InlineData(Reason.TwoReadings, 5.0, 0.1, 9.0, 0.2)]
    [InlineData(Reason.OneUse, 5.0, 0.1, 5.0, 0.2, 5.0, 0.15)]
    [InlineData(Reason.Flat, 5.0, 0.1, 9.0, 0.1, 12.0, 0.1)]
    [InlineData(Reason.Flat, 5.1, 0.3, 9.7, 0.3, 12.3, 0.3, 31.9, 0.3)]
    [InlineData(Reason.Flat, 5.0, 0.2, 9.0, 0.1, 12.0, 0.19)]
    [InlineData(Reason.Shrinking, 5.0, 0.5, 9.0, 0.4, 13.0, 0.301, 17.0, 0.2)]
    public void What_the_readings_cannot_say_is_said_with_its_reason(Reason reason, params double[] pairs)
    {
        var readings = pairs.Chunk(2).Select(pair => new WearReading(pair[0], pair[1])).ToArray();
        var unsaid = Assert.IsType<WearTrendUnsaid>(WearTrend.Of(readings, WearLimit.Share));
        Assert.Equal(reason, unsaid.Reason);
        Assert.Equal(readings.Length, unsaid.Readings);
        Assert.StartsWith("No trend: ", unsaid.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_readings_still_give_the_bare_rate_between_them()
    {
        Assert.Equal(0.025, ((WearTrendUnsaid)WearTrend.Of([new(5, 0.1), new(9, 0.2)], WearLimit.Share)).RateBetweenEnds!.Value, 1e-12);
    }

    [Fact]
    public void Readings_on_a_line_are_not_taken_to_be_without_uncertainty_when_that_is_known()
    {
        WearReading[] exact = [new(10, 0.25), new(20, 0.5), new(30, 0.75)];
        var bare = Assert.IsType<WearTrendLine>(WearTrend.Of(exact, WearLimit.Share));
        Assert.Equal(40, bare.UseAtLimit, 1e-9);
        Assert.False(bare.UseAtLimitBounds.Lower >= 40); // open, or earlier than the line itself
        var known = Assert.IsType<WearTrendLine>(WearTrend.Of(exact, WearLimit.Share, new() { ReadingUncertainty = 0.01 }));
        Assert.InRange(known.UseAtLimitBounds.Lower!.Value, 30, 38);
    }

    [Fact]
    public void The_order_of_readings_does_not_matter_and_counting_in_another_unit_scales_the_use()
    {
        var reading = Gen.Select(Gen.Int[1, 500].Select(use => use / 10.0), Gen.Int[0, 1000].Select(wear => wear / 1000.0));
        Gen.Select(reading.Array[3, 12], Gen.Double[0.01, 100]).Sample((pairs, factor) =>
        {
            WearReading[] readings = [.. pairs.Select(pair => new WearReading(pair.Item1, pair.Item2))];
            WearReading[] turned = [.. readings.Reverse().Select(r => r with { Use = r.Use * factor })];
            var (one, other) = (WearTrend.Of(readings, WearLimit.Share), WearTrend.Of(turned, WearLimit.Share));
            Assert.Equal(one.GetType(), other.GetType());
            if (one is WearTrendLine line)
            {
                var scaled = (WearTrendLine)other;
                Assert.Equal(line.UseAtLimit * factor, scaled.UseAtLimit, 1e-6 * Math.Abs(scaled.UseAtLimit));
                Assert.Equal(line.UseAtLimitBounds.IsOpenAbove, scaled.UseAtLimitBounds.IsOpenAbove);
            }
        });
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(2.0)]
    public void Wear_that_is_not_steady_is_shown_as_it_goes_when_the_readings_can_tell(double power)
    {
        WearReading[] readings = [.. Enumerable.Range(1, 8).Select(i => new WearReading(i * 5, Math.Pow(i / 10.0, power)))];
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of(readings, WearLimit.Share, new() { ReadingUncertainty = 0.002 }));
        Assert.False(trend.Curve.IsStraight);
        Assert.Equal(power > 1, trend.Curve.Power > 1);
        Assert.Equal(50, trend.UseAtLimit, 1.5);
        Assert.InRange(50, trend.UseAtLimitBounds.Lower!.Value, trend.UseAtLimitBounds.Upper!.Value);
    }

    [Fact]
    public void Wear_that_bends_more_than_any_power_has_no_date()
    {
        WearReading[] readings = [.. Enumerable.Range(1, 8).Select(i => new WearReading(i * 5, Math.Pow(i / 9.0, 8)))];
        var unsaid = Assert.IsType<WearTrendUnsaid>(WearTrend.Of(readings, WearLimit.Share, new() { ReadingUncertainty = 0.005 }));
        Assert.Equal(Reason.Bent, unsaid.Reason);
    }

    /// <summary>
    /// The promise itself, by simulation: a part with a known course of wear must not pass its limit before it is looked at again. At a level of
    /// 95 % two and a half of a hundred may; the readings scatter as much as they claim, and twice that.
    /// </summary>
    [Theory]
    [InlineData(0.7, 1)]
    [InlineData(1.0, 1)]
    [InlineData(1.5, 1)]
    [InlineData(2.0, 1)]
    [InlineData(1.0, 2)]
    [InlineData(1.5, 2)]
    [InlineData(2.0, 2)]
    public void Look_again_comes_before_the_limit(double power, double scatter)
    {
        const double Uncertainty = 0.02;
        var random = new Random(20);
        var (said, late) = (0, 0);
        for (var part = 0; part < 600; part++)
        {
            var (life, use) = (60 + random.NextDouble() * 80, 0.0);
            var count = random.Next(3, 7);
            var readings = new List<WearReading>();
            for (var i = 0; i < count; i++)
            {
                use += life * 0.75 / count * (0.6 + 0.8 * random.NextDouble());
                var noise = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
                readings.Add(new WearReading(use, Math.Pow(use / life, power) + scatter * Uncertainty * noise));
            }

            if (use < life && WearTrend.Of(readings, WearLimit.Share, new() { ReadingUncertainty = Uncertainty }) is WearTrendLine trend)
            {
                said++;
                late += use + trend.LookAgainWithin > life ? 1 : 0;
            }
        }

        Assert.InRange(said, 400, 600);
        Assert.InRange(late / (double)said, 0, 0.025);
    }

    [Fact]
    public void Wrong_readings_are_refused()
    {
        Assert.Throws<ArgumentException>(() => WearTrend.Of([new(-1, 0.1)], WearLimit.Share));
        Assert.Throws<ArgumentException>(() => WearTrend.Of([new(1, double.NaN)], WearLimit.Share));
        Assert.Throws<ArgumentException>(() => WearLimit.Between(1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WearTrend.Of(Steady, WearLimit.Share, new() { Level = 1 }));
    }

    [Fact]
    public void Dates_to_look_by_come_in_order()
    {
        var trend = Assert.IsType<WearTrendLine>(WearTrend.Of(Steady, WearLimit.Share, new() { Level = 0.8 }));
        var use = SeasonUse.Of(UseMeasure.Hours, [new(new(2023, 1, 1), 0), new(new(2025, 1, 1), 31)], new SeasonCalendar(4, 10));
        var look = LookAgain.Of(trend, use, new DateOnly(2025, 1, 1));
        Assert.Equal(trend.LookAgainWithin, look.Within);
        Assert.True(look.By < look.LimitExpected && look.LimitExpected < look.LimitAtLatest);
        Assert.InRange(look.By!.Value, new DateOnly(2025, 4, 1), new DateOnly(2026, 10, 31));
    }
}
