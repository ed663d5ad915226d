using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Tests.Settings;

public class ShimPacksTests
{
    [Fact]
    public void Too_much_float_takes_a_thicker_pack()
    {
        // 1.00 in the trial leaves 0.35 float; 0.05 to 0.15 is wanted, so 1.20 to 1.30 of shim.
        var plan = ShimPacks.For(Shims.Task(1.00, 0.35, (0.05, 0.15), ShimEffect.Reduces, (1.0, 2), (0.5, 2), (0.25, 2), (0.2, 2), (0.1, 4)));

        Assert.Equal(1.2, plan.From.Millimeters, 1e-12);
        Assert.Equal(1.3, plan.To.Millimeters, 1e-12);
        Assert.Equal([(1.0, 1), (0.25, 1)], Shims.Of(plan.Packs[0]));
        Assert.Equal(0.10, plan.Packs[0].Result.Value.As(LengthUnit.Millimeter), 1e-12);
        Assert.Equal(0, plan.Packs[0].OffMiddle.Millimeters, 1e-12);
        Assert.Equal(3, plan.Packs.Count);
        Assert.Equal([(1.0, 1), (0.2, 1)], Shims.Of(plan.Packs[1]));
        Assert.Equal(0.15, plan.Packs[1].Result.Value.As(LengthUnit.Millimeter), 1e-12);
        Assert.Equal(3, plan.Packs[2].ShimCount);
    }

    [Fact]
    public void Where_shim_adds_preload_the_pack_goes_the_other_way()
    {
        // 0.06 interference with 1.00; 0.02 to 0.04 is wanted, so 0.96 to 0.98.
        var plan = ShimPacks.For(Shims.Task(1.00, 0.06, (0.02, 0.04), ShimEffect.Increases, (0.97, 1), (0.9, 1), (0.08, 1)));

        Assert.Equal([(0.97, 1)], Shims.Of(plan.Packs[0]));
        Assert.Equal(0.03, plan.Packs[0].Result.Value.As(LengthUnit.Millimeter), 1e-12);
        Assert.Equal([(0.9, 1), (0.08, 1)], Shims.Of(plan.Packs[1]));
    }

    [Fact]
    public void Float_may_be_wanted_below_nought_as_preload()
    {
        var plan = ShimPacks.For(Shims.Task(1.00, 0.05, (-0.04, -0.02), ShimEffect.Reduces, (1.08, 1)));

        Assert.Equal(-0.03, plan.Packs[0].Result.Value.As(LengthUnit.Millimeter), 1e-12);
    }

    [Fact]
    public void Fewest_shims_win_over_the_middle_of_the_band()
    {
        var plan = ShimPacks.For(Shims.Task(0, 1.00, (0.00, 0.10), ShimEffect.Reduces, (0.90, 1), (0.50, 1), (0.45, 1)));

        Assert.Equal([(0.90, 1)], Shims.Of(plan.Packs[0]));
        Assert.Equal([(0.50, 1), (0.45, 1)], Shims.Of(plan.Packs[1]));
    }

    [Fact]
    public void A_value_that_is_right_without_shims_takes_none()
    {
        var plan = ShimPacks.For(Shims.Task(0, 0.10, (0.05, 0.15), ShimEffect.Reduces, (0.5, 3)));

        Assert.Empty(plan.Packs[0].Shims);
    }

    [Fact]
    public void Stock_that_cannot_do_it_says_what_to_buy_and_what_to_grind()
    {
        // Wanted 1.20 to 1.30. On the shelf one 1.00 and one 1.32; 0.25 and 0.10 are sold.
        var plan = ShimPacks.For(Shims.Task(1.00, 0.35, (0.05, 0.15), ShimEffect.Reduces, (1.32, 1), (1.0, 1), (0.25, 0), (0.1, 0)));

        Assert.False(plan.StockSuffices);
        Assert.Equal([(1.0, 1), (0.25, 1)], Shims.Of(plan.Purchase!));
        Assert.Equal(1, plan.Purchase!.Shims.Sum(shim => shim.ToBuy));
        var ground = Assert.Single(plan.Grinding!.Shims);
        Assert.Equal(1.32, ground.Thickness.Millimeters, 1e-12);
        Assert.Equal(1.25, ground.GroundTo!.Value.Millimeters, 1e-12);
        Assert.Equal(0.10, plan.Grinding.Result.Value.As(LengthUnit.Millimeter), 1e-12);
    }

    [Fact]
    public void Buying_uses_as_few_new_shims_as_possible_even_where_the_pack_grows()
    {
        // Exactly 0.60: one bought 0.30 with 0.20 and 0.10 from the shelf, rather than two bought 0.30.
        var plan = ShimPacks.For(Shims.Task(0, 0.60, (0, 0), ShimEffect.Reduces, (0.3, 0), (0.2, 2), (0.1, 1)));

        Assert.Equal([(0.3, 1), (0.2, 1), (0.1, 1)], Shims.Of(plan.Purchase!));
        Assert.Equal(1, plan.Purchase!.Shims.Sum(shim => shim.ToBuy));
    }

    [Fact]
    public void Nothing_helps_where_even_no_shim_is_too_much()
    {
        var plan = ShimPacks.For(Shims.Task(0.2, 0.00, (0.5, 0.6), ShimEffect.Reduces, (0.1, 5)));

        Assert.True(plan.IsImpossible);
        Assert.False(plan.StockSuffices);
        Assert.Null(plan.Purchase);
        Assert.Null(plan.Grinding);
    }

    [Fact]
    public void A_limit_on_the_number_of_shims_is_kept()
    {
        var task = Shims.Task(0, 1.0, (0, 0), ShimEffect.Reduces, (0.5, 0), (0.25, 4)) with { MostShims = 3 };
        var plan = ShimPacks.For(task);

        Assert.Empty(plan.Packs);
        Assert.Equal([(0.5, 1), (0.25, 2)], Shims.Of(plan.Purchase!));
    }

    [Fact]
    public void The_result_carries_measurement_trial_pack_and_every_shim()
    {
        var measured = MeasuredQuantity.From([Length.FromMillimeters(0.35)], new Instrument { ErrorLimit = Length.FromMicrometers(6) });
        var trial = new TrialBuild(Length.FromMillimeters(1), Length.FromMicrometers(2), measured);
        ShimStock[] stock = [new(Length.FromMillimeters(0.4), 3, Length.FromMicrometers(10))];
        var band = new TargetBand(Length.FromMillimeters(0.1), Length.FromMillimeters(0.2));
        var pack = ShimPacks.For(new ShimTask(trial, band, ShimEffect.Reduces, stock)).Packs[0];

        var expected = Math.Sqrt((36 / 3.0) + 4 + (3 * 100 / 3.0));
        Assert.Equal(expected, pack.Result.StandardUncertainty.As(LengthUnit.Micrometer), 1e-9);
        Assert.Equal(Conformity.Inside, pack.Conformity);
        Assert.Equal(0.15, pack.Result.Value.As(LengthUnit.Millimeter), 1e-12);
    }

    [Fact]
    public void A_large_fine_stock_is_searched_in_reasonable_work()
    {
        var stock = Enumerable.Range(0, 60).Select(i => (1.001 + (i * 0.017), 6)).ToArray();
        var plan = ShimPacks.For(Shims.Task(9.0, 0.35, (0.099, 0.101), ShimEffect.Reduces, stock));

        Assert.True(plan.StockSuffices);
        Assert.InRange(plan.Packs[0].Thickness.Millimeters, 9.249 - 1e-9, 9.251 + 1e-9);
    }

    [Fact]
    public void Wrong_stock_is_refused_with_a_clear_message()
    {
        Assert.Contains("listed twice", Refusal((0.1, 1), (0.1, 2)), StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => Run((0, 1)));
        Assert.ThrowsAny<ArgumentException>(() => Run((0.1, -1)));
        Assert.Throws<ArgumentException>(() => new TargetBand(Length.FromMillimeters(0.2), Length.FromMillimeters(0.1)));
        Assert.ThrowsAny<ArgumentException>(() => ShimPacks.For(Shims.Task(30, 0.1, (0, 0.2), ShimEffect.Reduces, (0.1, 1))));
        Assert.Contains("further from the target", Assert.ThrowsAny<ArgumentException>(() => ShimPacks.For(Shims.Task(1, 30, (0, 0.2), ShimEffect.Reduces, (0.1, 1)))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Shims_of_whole_thou_are_added_without_rounding()
    {
        // 0.010 in gave 0.008 in, so 0.014 to 0.015 in give 0.004 to 0.003 in. One thou is 25.4 µm exactly.
        const double Thou = 0.0254;
        var plan = ShimPacks.For(Shims.Task(10 * Thou, 8 * Thou, (3 * Thou, 4 * Thou), ShimEffect.Reduces, (7 * Thou, 2), (2 * Thou, 4)));

        Assert.Equal(14 * Thou, plan.From.Millimeters, 1e-12);
        Assert.Equal(15 * Thou, plan.To.Millimeters, 1e-12);
        Assert.Equal(14 * Thou, plan.Packs[0].Thickness.Millimeters, 1e-12);
        Assert.Equal(2, plan.Packs[0].ShimCount);
        Assert.Equal(4 * Thou, plan.Packs[0].Result.Value.As(LengthUnit.Millimeter), 1e-12);
    }

    [Fact]
    public void A_height_far_longer_than_any_pack_is_shimmed_by_its_difference()
    {
        var plan = ShimPacks.For(Shims.Task(0.5, 45.2, (45.28, 45.32), ShimEffect.Increases, (0.5, 2), (0.1, 2)));

        Assert.Equal([(0.5, 1), (0.1, 1)], Shims.Of(plan.Packs[0]));
    }

    private static string Refusal(params (double, int)[] stock) => Assert.ThrowsAny<ArgumentException>(() => Run(stock)).Message;

    private static ShimPlan Run(params (double, int)[] stock) =>
        ShimPacks.For(Shims.Task(0.5, 0.1, (0, 0.2), ShimEffect.Reduces, stock));
}
