using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class WeibullPropertyTests
{
    [Fact]
    public void Counting_in_another_unit_scales_the_life_and_leaves_the_shape()
    {
        Gen.Select(Samples.Any, Gen.Double[0.01, 100]).Sample((sample, factor) =>
        {
            var fit = (WeibullFit)Weibull.Fit(sample);
            var scaled = (WeibullFit)Weibull.Fit(Samples.Of(sample.Lives.Select(life => life with { Amount = life.Amount * factor })));
            Close(fit.Shape, scaled.Shape);
            Close(fit.Scale * factor, scaled.Scale);
            Close(fit.LifeAt(0.1) * factor, scaled.LifeAt(0.1));
            Close(fit.LifeBounds(0.1).Lower!.Value * factor, scaled.LifeBounds(0.1).Lower!.Value);
        }, iter: 200);
    }

    [Fact]
    public void No_nearby_shape_and_scale_is_likelier_than_the_fit()
    {
        Gen.Select(Samples.Any, Gen.Double[-0.5, 0.5], Gen.Double[-0.5, 0.5]).Sample((sample, shift, stretch) =>
        {
            var fit = (WeibullFit)Weibull.Fit(sample);
            var other = fit.LogLikelihoodAt(fit.Shape * Math.Exp(shift), fit.Scale * Math.Exp(stretch / fit.Shape));
            Assert.True(other <= fit.LogLikelihood + 1e-9 * Math.Abs(fit.LogLikelihood));
        }, iter: 500);
    }

    [Fact]
    public void Bounds_hold_the_estimate_and_widen_with_the_level()
    {
        Samples.Any.Sample(sample =>
        {
            var fit = (WeibullFit)Weibull.Fit(sample);
            var narrow = fit.LifeBounds(0.1, 0.8);
            var wide = fit.LifeBounds(0.1, 0.95);
            Assert.True(wide.Lower < narrow.Lower && narrow.Lower < fit.LifeAt(0.1));
            Assert.True(fit.LifeAt(0.1) < narrow.Upper);
            Assert.True(wide.Upper is null || narrow.Upper < wide.Upper);
        }, iter: 200);
    }

    [Fact]
    public void A_unit_still_running_for_long_raises_B50()
    {
        var fit = (WeibullFit)Weibull.Fit(Samples.Failing(20, 30, 45, 60));
        var longer = (WeibullFit)Weibull.Fit(Samples.Of(
            Samples.Failing(20, 30, 45, 60).Lives.Append(new ObservedLife(90, false))));
        Assert.True(longer.LifeAt(0.5) > fit.LifeAt(0.5));
    }

    [Fact]
    public void Share_failed_at_Bp_is_p()
    {
        Gen.Select(Samples.Any, Gen.Double[0.01, 0.99]).Sample((sample, share) =>
        {
            var fit = (WeibullFit)Weibull.Fit(sample);
            Close(1 - share, fit.SurvivalAt(fit.LifeAt(share)));
        }, iter: 200);
    }

    private static void Close(double expected, double actual) => Assert.Equal(expected, actual, 1e-8 * Math.Abs(expected));
}
