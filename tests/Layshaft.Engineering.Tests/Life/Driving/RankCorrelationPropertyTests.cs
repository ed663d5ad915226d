using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Driving;

public class RankCorrelationPropertyTests
{
    [Theory]
    [InlineData(3, 6)]
    [InlineData(4, 24)]
    [InlineData(6, 720)]
    public void Full_agreement_is_one_order_among_all(int count, int orders)
    {
        double[] values = [.. Enumerable.Range(1, count).Select(value => (double)value)];
        var ranks = RankCorrelation.Of(values, values);
        Assert.Equal(1, ranks.Rho!.Value, 1e-14);
        Assert.Equal(1.0 / orders, ranks.PValuePositive!.Value, 1e-14);
    }

    [Fact]
    public void Only_the_order_counts_and_turning_it_turns_the_sign()
    {
        Gen.Double[0.1, 9].Array[5].Select(Gen.Double[0.1, 9].Array[5]).Sample((x, y) =>
        {
            var rho = RankCorrelation.Of(x, y).Rho;
            Assert.Equal(rho!.Value, RankCorrelation.Of([.. x.Select(Math.Exp)], y).Rho!.Value, 1e-12);
            Assert.Equal(-rho!.Value, RankCorrelation.Of([.. x.Select(value => -value)], y).Rho!.Value, 1e-12);
        });
    }

    [Fact]
    public void All_ties_say_nothing()
    {
        Assert.Null(RankCorrelation.Of([1, 1, 1, 1], [1, 2, 3, 4]).Rho);
        Assert.Null(RankCorrelation.Of([], []).Rho);
    }
}
