using Layshaft.Engineering.Gearing;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Rules by which sets of ratios are laid out.</summary>
public class GearSetRules
{
    [Fact]
    public void A_progressive_set_steps_by_p2() // Naunheimer et al., Automotive Transmissions (from memory)
    {
        double[] expected = [4.0, 2.2935, 1.5123, 1.1467, 1.0];
        IReadOnlyList<double> set = GearSteps.Progressive(4, 5, 1.15);
        Assert.Equal(5, set.Count);
        for (int i = 0; i < 5; i++)
        {
            Assert.Equal(expected[i], set[i], 5e-5);
        }

        Assert.Equal(1.15, set[0] / set[1] / (set[1] / set[2]), 5e-10);
    }

    [Fact]
    public void A_geometric_set_has_one_step() // lecture slides on stepped gearboxes (read: formula in words)
    {
        double step = GearSteps.Geometric(4, 5);
        Assert.Equal(4, Math.Pow(step, 4), 5e-13);
        IReadOnlyList<double> set = GearSteps.Progressive(4, 5, 1);
        Assert.All(Enumerable.Range(0, 4), i => Assert.Equal(step, set[i] / set[i + 1], 12));
    }
}
