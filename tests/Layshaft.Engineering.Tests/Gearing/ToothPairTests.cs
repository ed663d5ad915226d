using CsCheck;
using Layshaft.Engineering.Gearing;

namespace Layshaft.Engineering.Tests.Gearing;

public class ToothPairTests
{
    private static readonly Gen<ToothPair> s_pairs = Gen.Select(Gen.Int[3, 400], Gen.Int[3, 400], (a, b) => new ToothPair(a, b));

    [Fact]
    public void Ratio_is_driven_over_driver_and_below_one_is_an_overdrive()
    {
        var pair = new ToothPair(driver: 23, driven: 29);
        Assert.Equal(29.0 / 23, pair.Ratio);
        Assert.False(pair.IsOverdrive);
        Assert.True(pair.Swapped.IsOverdrive);
        Assert.Equal("29/23", pair.ToString());
    }

    [Fact]
    public void Swapping_inverts_the_ratio_and_twice_is_the_same_pair() => s_pairs.Sample(pair =>
        Math.Abs((pair.Ratio * pair.Swapped.Ratio) - 1) < 1e-15 && pair.Swapped.Swapped == pair);

    [Fact]
    public void The_same_teeth_meet_after_the_least_common_multiple_and_not_before() => Gen.Select(Gen.Int[3, 40], Gen.Int[3, 40])
        .Sample((driver, driven) =>
        {
            var pair = new ToothPair(driver, driven);
            int met = 1;
            while (met % driver != 0 || met % driven != 0)
            {
                met++;
            }

            Assert.Equal(met, pair.MeshesToRepeat);
            Assert.Equal(met, pair.DriverTurnsToRepeat * driver);
            Assert.Equal(pair.IsHunting, met == driver * driven);
        });

    [Theory]
    [InlineData(0, 29)]
    [InlineData(23, -1)]
    [InlineData(401, 20)]
    public void Impossible_counts_are_faults_not_numbers(int driver, int driven)
    {
        Outcome<ToothPair> outcome = ToothPair.Create(driver, driven);
        Assert.Null(outcome.Value);
        GearingFault fault = Assert.Single(outcome.Faults);
        Assert.Equal(GearingFaultKind.OutOfRange, fault.Kind);
        Assert.Contains("3 to 400 teeth", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => new ToothPair(driver, driven));
    }
}
