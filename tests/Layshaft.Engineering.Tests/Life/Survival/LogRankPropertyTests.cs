using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Survival;

public class LogRankPropertyTests
{
    [Fact]
    public void Expected_failures_add_up_to_those_seen()
    {
        Gen.Select(Samples.Any, Samples.Any, Samples.Any).Sample((a, b, c) =>
        {
            if (LogRank.Compare([new("a", a), new("b", b), new("c", c)], 1) is LogRankTest test)
            {
                Assert.Equal(test.Groups.Sum(group => group.Observed), test.Groups.Sum(group => group.Expected), 1e-9);
                Assert.True(test.ChiSquared >= 0);
                Assert.Equal(2, test.DegreesOfFreedom);
            }
        });
    }

    [Fact]
    public void The_order_of_groups_does_not_matter()
    {
        Gen.Select(Samples.Any, Samples.Any, Samples.Any).Sample((a, b, c) =>
        {
            var one = (LogRankTest)LogRank.Compare([new("a", a), new("b", b), new("c", c)], 1);
            var other = (LogRankTest)LogRank.Compare([new("c", c), new("a", a), new("b", b)], 1);
            Assert.Equal(one.ChiSquared, other.ChiSquared, 1e-8 * (1 + one.ChiSquared));
        });
    }

    [Fact]
    public void Equal_groups_do_not_differ()
    {
        Samples.Any.Sample(sample =>
        {
            var test = (LogRankTest)LogRank.Compare([new("a", sample), new("b", sample)], 1);
            Assert.Equal(0, test.ChiSquared, 1e-12);
            Assert.Equal(1, test.PValue, 1e-5);
        });
    }

    [Fact]
    public void A_group_that_lives_ten_times_as_long_is_told_apart()
    {
        var rough = Samples.Failing(5, 6, 7, 8, 9, 10);
        var gentle = Samples.Failing(50, 60, 70, 80, 90, 100);
        Assert.True(((LogRankTest)LogRank.Compare([new("novice", rough), new("expert", gentle)])).PValue < 0.01);
    }

    [Fact]
    public void Few_failures_are_not_compared()
    {
        var unsaid = Assert.IsType<ComparisonUnsaid>(LogRank.Compare([new("a", Samples.Failing(5)), new("b", Samples.Failing(9))]));
        Assert.Equal("Too few to compare: 2 failures in all, at least 10 are needed.", unsaid.Words);
    }

    [Fact]
    public void Hours_and_kilometres_are_not_compared()
    {
        var km = LifeSample.Of(UseMeasure.Kilometres, [new ObservedLife(5, true)]);
        Assert.Throws<ArgumentException>(() => LogRank.Compare([new("a", Samples.Failing(5)), new("b", km)]));
    }
}
