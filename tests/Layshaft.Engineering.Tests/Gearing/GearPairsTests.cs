using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class GearPairsTests
{
    private static readonly Drivetrain s_train = Drivetrain.Create(
        [Gear.FromTeeth("1", new ToothPair(15, 34)), Gear.FromTeeth("2", new ToothPair(18, 30)), Gear.FromTeeth("3", new ToothPair(21, 27))], null, FinalDrive.FromRatio(3.9).Require()).Require();

    private static readonly GearSet s_fitted = new(null, s_train.FinalDrive);

    [Fact]
    public void Sets_with_the_same_pairs_are_one_set()
    {
        GearSet one = s_fitted with { Gears = new GearPairs(new(15, 34), new(19, 30), new(21, 27)) }, other = s_fitted with { Gears = new GearPairs(new(15, 34), new(19, 30), new(21, 27)) };
        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.NotEqual(one, s_fitted);
        Assert.Equal([2], s_train.GearsThatDiffer(s_fitted, one));
        Assert.Equal(30.0 / 19, s_train.With(one).Gears[1].Ratio, 1e-12);
        Assert.Empty(s_train.GearsThatDiffer(s_fitted, s_fitted with { Gears = new GearPairs(new(15, 34), new(18, 30), new(21, 27)) }));
    }

    [Fact]
    public void Ratios_fall_and_every_gear_has_a_pair()
    {
        Assert.Throws<ArgumentException>(() => new GearPairs(new ToothPair(18, 30), new ToothPair(15, 34)));
        Assert.Throws<ArgumentException>(() => s_train.With(s_fitted with { Gears = new GearPairs(new ToothPair(15, 34)) }));
    }

    [Theory]
    [InlineData(true, false, 0, 0.5)]
    [InlineData(false, true, 0, 3)]
    [InlineData(true, false, 1, 3)]
    [InlineData(false, false, 3, 3.5)]
    public void Work_adds_up(bool drop, bool final, int pairs, double hours)
    {
        ChangeWork work = new(Duration.FromHours(0.5), Duration.FromHours(3), Duration.FromHours(2.5), Duration.FromHours(0.5));
        Assert.Equal(hours, work.Of(drop, final, pairs).Hours, 1e-12);
    }
}
