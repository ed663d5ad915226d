using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class WeibullUnsaidTests
{
    private static readonly ObservedLife[] StillGood = [.. Enumerable.Repeat(ObservedLife.GoodAt(30), 8)];

    [Fact]
    public void Two_failures_are_too_few()
    {
        var unsaid = Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Of(StillGood.Append(ObservedLife.FailedAt(10)).Append(ObservedLife.FailedAt(12)))));
        Assert.Equal((LifeUnsaidReason.TooFew, 10, 2), (unsaid.Reason, unsaid.Units, unsaid.Failures));
    }

    [Fact]
    public void Seven_parts_are_too_few_whatever_failed() =>
        Assert.Equal(LifeUnsaidReason.TooFew, Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Failing(10, 20, 30, 40, 50, 60, 70))).Reason);

    [Fact]
    public void An_empty_sample_is_too_few() => Assert.Equal(0, Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Of())).Units);

    [Fact]
    public void Failures_all_at_one_usage_have_no_spread_to_fit() =>
        Assert.Equal(LifeUnsaidReason.NoSpread, Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Failing([.. Enumerable.Repeat(40.0, 8)]))).Reason);

    [Fact]
    public void Failures_between_the_same_two_inspections_with_all_others_good_before_have_no_spread()
    {
        var lives = StillGood.Concat(Enumerable.Repeat(ObservedLife.FailedBetween(40, 60), 4));
        Assert.Equal(LifeUnsaidReason.NoSpread, Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Of(lives))).Reason);
    }

    [Fact]
    public void Failures_at_one_usage_with_parts_good_for_longer_can_be_fitted()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Samples.Of(Enumerable.Repeat(ObservedLife.FailedAt(40), 8).Append(ObservedLife.GoodAt(60)))));
        Assert.True(double.IsFinite(fit.Scale) && fit.Scale > 40);
    }

    [Theory]
    [InlineData(0, null, 0)]
    [InlineData(-1, null, 0)]
    [InlineData(double.NaN, null, 0)]
    [InlineData(double.PositiveInfinity, null, 0)]
    [InlineData(20.0, 10.0, 0)]
    [InlineData(20.0, null, 20)]
    [InlineData(20.0, 30.0, 25)]
    [InlineData(0.0, 0.0, 0)]
    public void A_life_that_cannot_be_is_refused(double lastGood, double? firstWorn, double entry) =>
        Assert.Throws<ArgumentException>(() => Samples.Of(new ObservedLife(lastGood, firstWorn, entry)));

    [Fact]
    public void Lives_of_very_different_length_still_fit()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Samples.Failing(1e-6, 1e-3, 1, 1e2, 1e4, 1e6, 1e8, 1e9)));
        Assert.InRange(fit.Shape, 0.01, 0.2);
        Assert.NotNull(fit.LifeBounds(0.1).Lower);
    }

    [Fact]
    public void Nearly_equal_lives_still_fit()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Samples.Failing(99.7, 99.8, 99.9, 100, 100.1, 100.2, 100.3, 100.4)));
        Assert.InRange(fit.Scale, 99.9, 100.4);
        Assert.InRange(fit.LifeAt(0.1), 99, 100);
        Assert.True(fit.LifeBounds(0.1).Lower < fit.LifeAt(0.1));
    }
}
