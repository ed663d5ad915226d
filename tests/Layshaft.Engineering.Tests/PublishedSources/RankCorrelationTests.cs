using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

public class RankCorrelationTests
{
    /// <summary>Worked example "IQ and hours of television" of the encyclopaedia article on Spearman's coefficient (from memory): ρ = −29/165, two-sided p = 0.627188 by t.</summary>
    [Fact]
    public void Ten_pairs_of_a_worked_example_give_its_coefficient_and_p_value()
    {
        var ranks = RankCorrelation.Of(
            [106, 100, 86, 101, 99, 103, 97, 113, 112, 110],
            [7, 27, 2, 50, 28, 29, 20, 12, 6, 17]);
        Assert.Equal(-29.0 / 165, ranks.Rho!.Value, 1e-14);
        Assert.Equal(0.627188, 2 * (1 - ranks.PValuePositive!.Value), 1e-6);
    }
}
