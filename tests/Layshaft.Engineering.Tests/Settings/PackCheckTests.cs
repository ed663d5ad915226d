using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Settings;

/// <summary>Trial, packs and built value against each other.</summary>
public class PackCheckTests
{
    private static readonly Instrument Gauge = new() { ErrorLimit = Length.FromMillimeters(0.003) };

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static PackCheck Check(double[] trialPack, double trial, double[] pack, double built, ShimEffect effect, Instrument? gauge = null) => PackCheck.Of(
        [.. trialPack.Select(Mm)],
        MeasuredQuantity.From([Mm(trial)], gauge ?? Gauge),
        [.. pack.Select(Mm)],
        MeasuredQuantity.From([Mm(built)], gauge ?? Gauge),
        effect,
        Mm(0.005));

    [Fact]
    public void More_shim_takes_float_away_or_adds_preload()
    {
        Assert.Equal(0.06, Check([0.5], 0.16, [0.5, 0.1], 0.06, ShimEffect.Reduces).Expected.Number.Value, 5e-10);
        Assert.Equal(0.26, Check([0.5], 0.16, [0.5, 0.1], 0.06, ShimEffect.Increases).Expected.Number.Value, 5e-10);
    }

    [Fact]
    public void Only_shims_that_were_changed_bring_their_tolerance()
    {
        // Two gauges of a/√3 with a = 0.003, and one or three shims of 0.005/√3.
        var one = Check([0.5], 0.16, [0.1, 0.5], 0.06, ShimEffect.Reduces).Difference.Number.StandardUncertainty;
        var three = Check([0.5], 0.16, [0.3, 0.3], 0.06, ShimEffect.Reduces).Difference.Number.StandardUncertainty;

        Assert.Equal(Math.Sqrt(((2 * 9) + 25) / 3.0) / 1000, one, 5e-10);
        Assert.Equal(Math.Sqrt(((2 * 9) + 75) / 3.0) / 1000, three, 5e-10);
    }

    [Theory]
    [InlineData(0.067, false)]
    [InlineData(0.068, true)]
    [InlineData(0.052, true)]
    public void A_difference_beyond_its_expanded_uncertainty_contradicts(double built, bool contradicts)
    {
        // U = 1.96 · 0.00379 mm = 0.0074 mm about 0.060 mm.
        Assert.Equal(contradicts, Check([0.5], 0.16, [0.5, 0.1], built, ShimEffect.Reduces).Contradicts);
    }

    [Fact]
    public void Nothing_contradicts_where_no_uncertainty_is_known() =>
        Assert.False(Check([0.5], 0.16, [0.5, 0.1], 0.9, ShimEffect.Reduces, Instrument.Unknown).Contradicts);

    [Fact]
    public void A_pack_is_the_sum_of_its_shims()
    {
        Assert.Equal(1.37, PackThickness.Of([Mm(1), Mm(0.25), Mm(0.12)]).Millimeters, 5e-13);
        Assert.Equal(0, PackThickness.Of([]).Millimeters);
        Assert.Equal(0.005, PackThickness.StandardUncertainty(3, Mm(0.005)).Millimeters, 5e-13);
    }
}
