using CsCheck;
using Layshaft.Engineering.Life;
using Verdict = Layshaft.Engineering.Life.WearAgainstWorkVerdict;

namespace Layshaft.Engineering.Tests.Life.Driving;

public class WearAgainstWorkTests
{
    private static readonly Dictionary<int, double> Work = new() { [2] = 900, [3] = 700, [4] = 400, [5] = 200, [6] = 100 };

    [Fact]
    public void Wear_in_proportion_to_work_agrees()
    {
        Gen.Double[1e-6, 10].Sample(factor =>
        {
            var comparison = WearAgainstWork.Of(Work.ToDictionary(gear => gear.Key, gear => gear.Value * factor), Work);
            Assert.Equal(Verdict.Agrees, comparison.Verdict);
            Assert.All(comparison.Shares, share => Assert.Equal(share.WorkShare, share.WearShare, 1e-12));
            Assert.All(comparison.Shares, share => Assert.Equal(1, share.Excess, 1e-12));
        });
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(6)]
    public void The_one_gear_that_wears_far_more_is_named(int gear)
    {
        var wear = Work.ToDictionary(entry => entry.Key, entry => entry.Value * (entry.Key == gear ? 4e-4 : 1e-4));
        var comparison = WearAgainstWork.Of(wear, Work);
        Assert.Equal((Verdict.OneGearStandsOut, (int?)gear), (comparison.Verdict, comparison.Gear));
        Assert.Equal(4, comparison.Shares.Single(share => share.Gear == gear).Excess, 1e-12);
    }

    [Fact]
    public void Wear_against_the_order_of_work_differs()
    {
        var comparison = WearAgainstWork.Of(new Dictionary<int, double> { [2] = 1, [3] = 2, [4] = 3, [5] = 4, [6] = 5 }, Work);
        Assert.Equal(Verdict.Differs, comparison.Verdict);
        Assert.Equal(-1, comparison.Ranks.Rho!.Value, 1e-12);
    }

    [Fact]
    public void Wear_in_the_order_of_work_agrees_even_where_shares_are_far_apart()
    {
        var steep = Work.ToDictionary(entry => entry.Key, entry => Math.Pow(entry.Value, 3));
        Assert.Equal(Verdict.Agrees, WearAgainstWork.Of(steep, Work).Verdict);
    }

    [Fact]
    public void Gears_without_work_do_not_count_and_three_are_too_few()
    {
        var wear = new Dictionary<int, double> { [-1] = 1, [1] = 1, [2] = 1, [3] = 1, [4] = 1 };
        Assert.Equal(Verdict.TooFewToSay, WearAgainstWork.Of(wear, Work).Verdict);
    }

    [Fact]
    public void No_wear_is_said_as_such()
    {
        Assert.Equal(Verdict.NoWear, WearAgainstWork.Of(Work.ToDictionary(gear => gear.Key, _ => 0.0), Work).Verdict);
    }
}
