using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Driving;

/// <summary>The rules themselves are common practice of the trade, no source.</summary>
public class DrivingSignsTests
{
    [Fact]
    public void First_and_reverse_worst_are_told_with_second_only_if_it_is_as_bad()
    {
        var signs = Signs((-1, 0.9), (1, 0.8), (2, 0.3), (3, 0.3), (4, 0.25));
        Assert.Equal(WearPattern.LowGearsAndReverseWorst, signs.Pattern);
        Assert.Equal([-1, 1], signs.Gears);
        Assert.Equal([-1, 1, 2], Signs((-1, 0.9), (1, 0.8), (2, 0.7), (3, 0.3), (4, 0.25)).Gears);
    }

    [Fact]
    public void One_gear_only_is_named()
    {
        var signs = Signs((1, 0.2), (2, 0.2), (3, 0.7), (4, 0.1));
        Assert.Equal(WearPattern.OneGearOnly, signs.Pattern);
        Assert.Equal([3], signs.Gears);
    }

    [Fact]
    public void All_gears_alike_are_told()
    {
        Assert.Equal(WearPattern.AllAlike, Signs((1, 0.5), (2, 0.45), (3, 0.4), (4, 0.42)).Pattern);
    }

    [Fact]
    public void A_gradual_spread_makes_no_pattern()
    {
        Assert.Equal(WearPattern.NoPattern, Signs((2, 0.8), (3, 0.6), (4, 0.4), (5, 0.2)).Pattern);
    }

    [Fact]
    public void Little_wear_and_few_gears_say_nothing()
    {
        Assert.Equal(WearPattern.HardlyWorn, Signs((1, 0.15), (2, 0.01), (3, 0.02)).Pattern);
        Assert.Equal(WearPattern.TooFewToSay, Signs((1, 0.9), (2, 0.1)).Pattern);
        Assert.Equal(WearPattern.TooFewToSay, DrivingSigns.Of([]).Pattern);
    }

    [Theory]
    [InlineData(0.6, 0.2, WornSide.DriveSide)]
    [InlineData(0.2, 0.6, WornSide.CoastSide)]
    [InlineData(0.5, 0.45, WornSide.BothAlike)]
    [InlineData(0.1, 0.0, WornSide.TooFewToSay)]
    public void The_side_worn_most_over_the_gears_is_told(double drive, double coast, WornSide expected)
    {
        Assert.Equal(expected, DrivingSigns.Of([new(2, drive, coast), new(3, drive, coast), new(4, drive, coast)]).Side);
    }

    [Fact]
    public void One_bad_gear_does_not_make_a_side()
    {
        var signs = DrivingSigns.Of([new(2, 1.0, 0.1), new(3, 0.2, 0.22), new(4, 0.2, 0.22)]);
        Assert.True(signs.DriveShare > DrivingSigns.SideShare);
        Assert.Equal(WornSide.BothAlike, signs.Side);
    }

    [Fact]
    public void Wrong_input_is_refused()
    {
        Assert.Throws<ArgumentException>(() => DrivingSigns.Of([new(2, 1, 1), new(2, 1, 1)]));
        Assert.Throws<ArgumentException>(() => DrivingSigns.Of([new(2, double.NaN, 1)]));
        Assert.Throws<ArgumentException>(() => DrivingSigns.Of([new(2, null, -0.1)]));
    }

    private static DrivingSigns Signs(params (int Gear, double Wear)[] gears) =>
        DrivingSigns.Of([.. gears.Select(gear => new GearWear(gear.Gear, gear.Wear, null))]);
}
