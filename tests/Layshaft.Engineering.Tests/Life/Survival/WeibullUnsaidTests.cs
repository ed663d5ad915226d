using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class WeibullUnsaidTests
{
    [Fact]
    public void Two_failures_are_too_few_and_the_reason_names_the_counts()
    {
        var sample = Samples.Of(new ObservedLife(10, true), new ObservedLife(12, true), new ObservedLife(30, false));
        var unsaid = Assert.IsType<LifeUnsaid>(Weibull.Fit(sample));
        Assert.Equal(LifeUnsaidReason.TooFewFailures, unsaid.Reason);
        Assert.Equal("Too few to say: 2 of 3 failed so far, at least 3 failures are needed.", unsaid.Words);
    }

    [Fact]
    public void An_empty_sample_is_too_few()
    {
        Assert.Equal(0, Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Of())).Units);
    }

    [Fact]
    public void Failures_all_at_one_use_have_no_spread_to_fit()
    {
        var unsaid = Assert.IsType<LifeUnsaid>(Weibull.Fit(Samples.Failing(40, 40, 40)));
        Assert.Equal(LifeUnsaidReason.NoSpread, unsaid.Reason);
    }

    [Fact]
    public void Failures_at_one_use_with_units_running_longer_can_be_fitted()
    {
        var sample = Samples.Of(Samples.Failing(40, 40, 40).Lives.Append(new ObservedLife(60, false)));
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(sample));
        Assert.True(double.IsFinite(fit.Scale) && fit.Scale > 40);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_life_that_is_not_a_positive_number_is_refused(double amount)
    {
        Assert.Throws<ArgumentException>(() => Samples.Failing(amount));
    }

    [Fact]
    public void Lives_of_very_different_length_still_fit()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Samples.Failing(1e-6, 1, 1e6, 1e9)));
        Assert.InRange(fit.Shape, 0.01, 0.2);
        Assert.NotNull(fit.LifeBounds(0.1).Lower);
    }

    [Fact]
    public void Nearly_equal_lives_still_fit()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Samples.Failing(99.99, 100, 100.01)));
        Assert.InRange(fit.Scale, 99.99, 100.02);
        Assert.InRange(fit.LifeAt(0.1), 99.9, 100);
        Assert.True(fit.LifeBounds(0.1).Lower < fit.LifeAt(0.1));
    }
}
