using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Settings;

public class PackChangeTests
{
    private static readonly Instrument Indicator = new() { ErrorLimit = Length.FromMillimeters(0.01), Resolution = Length.FromMillimeters(0.01) };

    [Fact]
    public void A_hundredth_more_shim_is_within_what_measuring_the_floats_may_make()
    {
        var change = Change(1.20, 0.07, 1.21, 0.07);
        Assert.Equal(PackVerdict.NotClear, change.Verdict);
        Assert.Equal(0.01, change.Space!.Value.Millimeters, 1e-9);

        // Each float: u = √(0.01²/12 + 0.01²/3) mm, U = 1.96 u; of the difference √2 U.
        var each = 1.959964 * Math.Sqrt((0.01 * 0.01 / 12) + (0.01 * 0.01 / 3));
        Assert.Equal(Math.Sqrt(2) * each, change.Uncertainty!.Value.Millimeters, 1e-5);
    }

    [Fact]
    public void Two_hundredths_more_shim_are_just_outside_it() => Assert.Equal(PackVerdict.Grown, Change(1.20, 0.07, 1.22, 0.07).Verdict);

    [Fact]
    public void A_tenth_more_shim_at_the_same_float_is_a_space_that_has_grown() => Assert.Equal(PackVerdict.Grown, Change(1.20, 0.07, 1.30, 0.07).Verdict);

    [Fact]
    public void A_tenth_more_shim_that_took_a_tenth_of_float_away_has_grown_nothing() => Assert.Equal(PackVerdict.NotClear, Change(1.20, 0.17, 1.30, 0.07).Verdict);

    [Fact]
    public void The_same_pack_is_the_same_whatever_the_float_reads() => Assert.Equal(PackVerdict.Same, Change(1.20, 0.07, 1.20, 0.09).Verdict);

    [Fact]
    public void Where_more_shim_gives_more_the_space_is_pack_less_float()
    {
        var change = PackChange.Between(Built(1.20, 0.07), Built(1.30, 0.17), ShimEffect.Increases, Length.Zero);
        Assert.Equal(0, change.Space!.Value.Millimeters, 1e-9);
    }

    [Theory]
    [InlineData(1.25, PackVerdict.NotClear)]
    [InlineData(1.26, PackVerdict.Grown)]
    [InlineData(1.15, PackVerdict.NotClear)]
    [InlineData(1.14, PackVerdict.Shrunk)]
    [InlineData(1.20, PackVerdict.Same)]
    public void Without_floats_to_compare_one_step_of_the_shims_is_no_change(double last, PackVerdict verdict)
    {
        var change = PackChange.Between(new BuiltPack(Mm(1.20), null), new BuiltPack(Mm(last), null), ShimEffect.Reduces, Mm(0.05));
        Assert.Equal(verdict, change.Verdict);
        Assert.Null(change.Space);
    }

    private static PackChange Change(double first, double before, double last, double after) =>
        PackChange.Between(Built(first, before), Built(last, after), ShimEffect.Reduces, Mm(0.05));

    private static BuiltPack Built(double pack, double left) => new(Mm(pack), MeasuredQuantity.From([Mm(left)], Indicator));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
