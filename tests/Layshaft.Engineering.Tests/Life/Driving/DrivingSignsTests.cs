using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Driving;

/// <summary>The rules themselves are common practice of the trade, no source.</summary>
public class DrivingSignsTests
{
    private static readonly double[] Ratios = [2.9, 2.1, 1.6, 1.25, 1.05, 0.92];

    [Fact]
    public void Gears_engaged_at_rest_are_told_apart_from_those_engaged_on_the_move()
    {
        var signs = Signs((-1, 1.06), (1, 0.28), (2, 0.72), (3, 0.71), (4, 0.73), (5, 0.10), (6, 0.10));

        Assert.Equal([-1], signs.AtRest);
        Assert.Equal([2, 3, 4], signs.Moving);
        Assert.False(signs.OneStandsOut);
        Assert.Equal([5, 6], signs.Better);
        Assert.False(signs.IsNothingWorn);
    }

    [Fact]
    public void First_gear_counts_as_engaged_at_rest_and_the_worst_comes_first()
    {
        Assert.Equal([1, -1], Signs((-1, 0.7), (1, 0.9), (2, 0.2)).AtRest);
        Assert.Empty(Signs((-1, 0.7), (1, 0.9), (2, 0.2)).Moving);
    }

    [Fact]
    public void One_gear_stands_out_beside_good_ones_only()
    {
        Assert.True(Signs((2, 0.2), (3, 0.7), (4, 0.1)).OneStandsOut);
        Assert.False(Signs((2, 0.2), (3, 0.7), (4, 0.4)).OneStandsOut);
        Assert.False(Signs((2, 0.2), (3, 0.7)).OneStandsOut);
    }

    [Fact]
    public void Below_the_watch_level_or_within_the_uncertainty_no_gear_is_worn()
    {
        var below = Signs((2, 0.5), (3, 0.1), (4, 0.1));
        Assert.Empty(below.Moving);
        Assert.True(below.IsNothingWorn);

        var close = DrivingSigns.Of([new(2, null, null, new(0.62, 0.05, 0.6)), new(3, null, null, new(0.58, 0.05, 0.6))], Ratios);
        Assert.Empty(close.Moving);
        Assert.False(close.IsNothingWorn);
    }

    [Fact]
    public void Higher_gears_are_better_because_of_their_steps_only_if_these_are_smaller()
    {
        Assert.Empty(DrivingSigns.Of(Wear((2, 0.7), (3, 0.7), (4, 0.1)), [2.9, 2.1, 1.6, 1.1]).Better);
        Assert.Empty(DrivingSigns.Of(Wear((2, 0.7), (3, 0.7), (4, 0.1)), []).Better);
        Assert.Empty(Signs((2, 0.7), (3, 0.1), (4, 0.7)).Better);
    }

    [Theory]
    [InlineData(0.9, 0.2, WornSide.Drive)]
    [InlineData(0.2, 0.9, WornSide.Coast)]
    [InlineData(0.8, 0.75, WornSide.BothAlike)]
    [InlineData(0.8, null, WornSide.Drive)]
    [InlineData(null, 0.8, WornSide.Coast)]
    public void The_side_worn_most_over_the_worn_gears_is_told(double? drive, double? coast, WornSide expected)
    {
        GearWear Gear(int gear) => new(gear, Of(drive), Of(coast), null);
        Assert.Equal(expected, DrivingSigns.Of([Gear(2), Gear(3), Gear(4)], Ratios).Side);
    }

    [Fact]
    public void A_side_that_was_not_recorded_is_not_guessed()
    {
        Assert.Equal(WornSide.NotKnown, Signs((2, 0.7), (3, 0.7)).Side);
        Assert.Equal(WornSide.NotKnown, DrivingSigns.Of([new(2, Of(0.7), null, null), new(3, null, Of(0.7), null)], Ratios).Side);
    }

    [Fact]
    public void One_bad_gear_does_not_make_a_side() => Assert.Equal(
        WornSide.BothAlike,
        DrivingSigns.Of([new(2, Of(1.9), Of(0.1), null), new(3, Of(0.7), Of(0.72), null), new(4, Of(0.7), Of(0.72), null)], Ratios).Side);

    [Fact]
    public void Nobody_is_blamed_below_the_watch_level() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 0.3], Gen.Double[0.4, 0.9]).Array[1, 6].Sample(wear =>
        {
            var signs = DrivingSigns.Of([.. wear.Select((w, i) => new GearWear(i == 0 ? -1 : i, new DogWear(w.Item1, w.Item2, w.Item3), null, null))], Ratios);
            var worn = wear.Count(w => w.Item1 - w.Item2 >= w.Item3);
            Assert.Equal(worn, signs.AtRest.Count + signs.Moving.Count);
            Assert.True(worn == 0 || !signs.IsNothingWorn);
        });

    [Fact]
    public void Wrong_input_is_refused()
    {
        Assert.Throws<ArgumentException>(() => DrivingSigns.Of([.. Wear((2, 1)), .. Wear((2, 1))], []));
        Assert.Throws<ArgumentException>(() => DrivingSigns.Of(Wear((2, double.NaN)), []));
        Assert.Throws<ArgumentException>(() => DrivingSigns.Of([new(2, null, null, null)], []));
    }

    private static DogWear? Of(double? share) => share is { } s ? new DogWear(s, 0.02, 0.6) : null;

    private static GearWear[] Wear(params (int Gear, double Wear)[] gears) => [.. gears.Select(gear => new GearWear(gear.Gear, null, null, Of(gear.Wear)))];

    private static DrivingSigns Signs(params (int Gear, double Wear)[] gears) => DrivingSigns.Of(Wear(gears), Ratios);
}
