using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class TurnbullCurveTests
{
    [Fact]
    public void Without_censoring_the_curve_is_the_share_still_good()
    {
        Gen.Int[1, 40].Array[1, 30].Sample(usages =>
        {
            var curve = TurnbullCurve.Of(Samples.Failing([.. usages.Select(usage => (double)usage)]));
            Assert.Equal(usages.Distinct().Order().Select(usage => (double)usage), curve.Steps.Select(step => step.To));
            Assert.All(curve.Steps, step => Assert.Equal(usages.Count(usage => usage > step.To) / (double)usages.Length, step.Survival, 1e-9));
            Assert.All(curve.Steps, step => Assert.Equal(step.From, step.To));
        });
    }

    [Fact]
    public void No_other_curve_is_likelier()
    {
        Gen.Select(Samples.AnyInspected, Gen.Double[0.01, 1].Array[60], Gen.Double[0.01, 0.3]).Sample((sample, noise, mix) =>
        {
            var steps = TurnbullCurve.Of(sample).Steps;
            double[] drops = [.. steps.Select((step, i) => (i == 0 ? 1 : steps[i - 1].Survival) - step.Survival)];
            var rest = steps[^1].Survival;
            var total = noise[..(drops.Length + 1)].Sum();
            double[] others = [.. drops.Select((drop, i) => (1 - mix) * drop + mix * noise[i] / total)];
            Assert.True(LogLikelihood(sample, steps, others, (1 - mix) * rest + mix * noise[drops.Length] / total) <= LogLikelihood(sample, steps, drops, rest) + 1e-4);
        }, iter: 300);
    }

    [Fact]
    public void A_curve_falls_between_0_and_1_and_never_rises()
    {
        Samples.AnyInspected.Sample(sample =>
        {
            var curve = TurnbullCurve.Of(sample);
            var before = (To: 0.0, Survival: 1.0);
            foreach (var step in curve.Steps)
            {
                Assert.True(step.From >= before.To && step.To >= step.From);
                Assert.InRange(step.Survival, -1e-12, before.Survival);
                before = (step.To, step.Survival);
            }
        });
    }

    [Fact]
    public void Nothing_failed_gives_no_steps_and_no_median()
    {
        var curve = TurnbullCurve.Of(Samples.Of(ObservedLife.GoodAt(10)));
        Assert.Empty(curve.Steps);
        Assert.Equal(10, curve.SeenTo);
    }

    // Mass lies in the steps; a truncated life is divided by what was left at its entry.
    private static double LogLikelihood(LifeSample sample, IReadOnlyList<TurnbullStep> steps, double[] drops, double rest)
    {
        double After(double usage) => drops.Where((_, i) => steps[i].From >= usage).Sum() + rest;
        return sample.Lives.Sum(life =>
        {
            var seen = life.FirstWorn is { } worn
                ? drops.Where((_, i) => steps[i].From >= life.LastGood && steps[i].To <= worn).Sum()
                : After(life.LastGood);
            return Math.Log(seen) - Math.Log(After(life.Entry));
        });
    }
}
