using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Log-rank test on the leukaemia data of Miller (1997). The rounded values are those printed by R's survdiff for
/// survival::aml in the package's documentation (from memory).
/// </summary>
public class LogRankTests
{
    [Fact]
    public void Leukaemia_groups_give_the_printed_log_rank_test()
    {
        var test = Assert.IsType<LogRankTest>(LogRank.Compare(
        [
            new LifeGroup("Maintained", SurvivalData.Sample("AMLM")),
            new LifeGroup("Nonmaintained", SurvivalData.Sample("AMLN")),
        ]));
        Assert.Equal(1, test.DegreesOfFreedom);
        Assert.Equal(3.4, test.ChiSquared, 0.05);
        Assert.Equal(0.07, test.PValue, 0.005);
        Assert.Equal([11, 12], test.Groups.Select(group => group.Units));
        Assert.Equal([7, 11], test.Groups.Select(group => group.Observed));
        Assert.Equal(10.69, test.Groups[0].Expected, 0.005);
        Assert.Equal(7.31, test.Groups[1].Expected, 0.005);
    }
}
