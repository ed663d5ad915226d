using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class KaplanMeierPropertyTests
{
    [Fact]
    public void Without_censoring_the_curve_is_the_share_still_good()
    {
        Gen.Int[1, 40].Array[1, 30].Sample(uses =>
        {
            var curve = KaplanMeier.Of(Samples.Failing([.. uses.Select(use => (double)use)]));
            foreach (var at in Enumerable.Range(0, 42))
            {
                Assert.Equal(uses.Count(use => use > at) / (double)uses.Length, curve.SurvivalAt(at), 1e-12);
            }
        });
    }

    [Fact]
    public void A_censored_unit_beyond_the_last_failure_never_lowers_the_curve()
    {
        Gen.Select(Samples.Any, Gen.Double[0, 50]).Sample((sample, beyond) =>
        {
            var lastFailure = sample.Lives.Last(life => life.Failed).Amount;
            var before = KaplanMeier.Of(sample);
            var after = KaplanMeier.Of(Samples.Of(sample.Lives.Append(new ObservedLife(lastFailure + beyond, false))));
            Assert.All(before.Steps.Zip(after.Steps), pair => Assert.True(pair.Second.Survival >= pair.First.Survival));
            Assert.Equal(before.Steps.Count, after.Steps.Count);
        });
    }

    [Fact]
    public void Limits_lie_around_the_curve_and_within_0_and_1()
    {
        Gen.Select(Samples.Any, Gen.Enum<KaplanMeierLimits>()).Sample((sample, kind) =>
        {
            foreach (var step in KaplanMeier.Of(sample, kind, 0.9).Steps.Where(step => step.StandardError is not null))
            {
                Assert.InRange(step.Limits.Lower!.Value, 0, step.Survival);
                Assert.InRange(step.Limits.Upper!.Value, step.Survival, 1);
            }
        });
    }

    [Fact]
    public void A_curve_that_rests_on_a_half_has_its_median_in_the_middle_of_the_rest()
    {
        Assert.Equal(25, KaplanMeier.Of(Samples.Failing(10, 20, 30, 40)).Median);
    }

    [Fact]
    public void Nothing_failed_gives_no_steps_and_no_median()
    {
        var curve = KaplanMeier.Of(Samples.Of(new ObservedLife(10, false)));
        Assert.Empty(curve.Steps);
        Assert.Null(curve.Median);
        Assert.True(curve.MedianBounds is { IsOpenBelow: true, IsOpenAbove: true });
        Assert.Equal(1, curve.SurvivalAt(1000));
    }
}
