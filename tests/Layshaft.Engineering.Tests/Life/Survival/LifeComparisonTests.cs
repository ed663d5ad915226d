using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class LifeComparisonTests
{
    private static readonly Gen<LifeSample> Enough = Samples.AnyInspected.Where(sample => sample.Failures >= LifeComparison.LeastFailures);

    [Fact]
    public void The_order_of_groups_does_not_matter()
    {
        Gen.Select(Enough, Enough, Enough).Sample((a, b, c) =>
        {
            if (LifeComparison.Of([a, b, c]) is LifeDifference one)
            {
                var other = (LifeDifference)LifeComparison.Of([c, a, b]);
                Assert.Equal(2, one.DegreesOfFreedom);
                Assert.Equal(one.Statistic, other.Statistic, 1e-6 * (1 + one.Statistic));
            }
        }, iter: 100);
    }

    [Fact]
    public void Equal_groups_do_not_differ() =>
        Enough.Sample(sample => Assert.Equal(0, ((LifeDifference)LifeComparison.Of([sample, sample])).Statistic, 1e-8), iter: 100);

    [Fact]
    public void A_group_that_lives_ten_times_as_long_is_told_apart()
    {
        var rough = Samples.Failing(5, 6, 7, 8, 9, 10);
        var gentle = Samples.Failing(50, 60, 70, 80, 90, 100);
        Assert.True(((LifeDifference)LifeComparison.Of([rough, gentle])).PValue < 0.01);
    }

    [Fact]
    public void A_group_with_few_failures_is_not_compared() =>
        Assert.Equal(7, Assert.IsType<NoComparison>(LifeComparison.Of([Samples.Failing(5, 6, 7, 8, 9, 10), Samples.Failing(9)])).Failures);

    [Fact]
    public void Hours_and_kilometres_are_not_compared()
    {
        var km = LifeSample.Of(UseMeasure.Kilometres, [ObservedLife.FailedAt(5)]);
        Assert.Throws<ArgumentException>(() => LifeComparison.Of([Samples.Failing(5), km]));
    }
}
