using CsCheck;
using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Tests.Measurement;

public class PartWearTests
{
    [Fact]
    public void A_fork_pad_that_wore_half_way_used_half_its_allowance()
    {
        var pad = Wear(5.70, 5.90, 5.90, 5.50);

        Assert.Equal(LimitSense.Lower, pad.Allowance.Sense);
        Assert.Equal(0.5, pad.ShareUsed.Value, 1e-12);
        Assert.Equal(0.2, pad.Wear.As(LengthUnit.Millimeter), 1e-12);
        Assert.Equal(Conformity.Inside, pad.Decision.Conformity);
    }

    [Fact]
    public void A_groove_that_opens_has_an_upper_limit()
    {
        var groove = Wear(6.32, 6.00, 6.10, 6.30);

        Assert.Equal(LimitSense.Upper, groove.Allowance.Sense);
        Assert.Equal(1.08, groove.ShareUsed.Value, 1e-9);
        Assert.Equal(Conformity.Outside, groove.Decision.Conformity);
    }

    [Fact]
    public void The_band_of_new_widens_the_share_by_the_law_of_propagation()
    {
        var share = Wear(6.15, 6.00, 6.10, 6.30).ShareUsed;

        // Allowance 0.25; new ±0.05 rectangular at sensitivity (6.15 - 6.30)/0.25²; reading ±0.004 rectangular.
        var expected = Math.Sqrt(Math.Pow(0.004 / Math.Sqrt(3) / 0.25, 2) + Math.Pow(0.05 / Math.Sqrt(3) * 0.15 / 0.0625, 2));
        Assert.Equal(expected, share.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void At_the_limit_the_width_of_new_no_longer_matters()
    {
        var band = Wear(6.30, 6.00, 6.10, 6.30).ShareUsed;

        Assert.Equal(1, band.Value, 1e-12);
        Assert.Equal(0.004 / Math.Sqrt(3) / 0.25, band.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void A_limit_inside_the_band_of_new_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new WearAllowance(6.0, 6.1, 6.05));
        Assert.Throws<ArgumentException>(() => new WearAllowance(6.1, 6.0, 6.3));
        Assert.Throws<ArgumentException>(() => new WearAllowance(6.0, 6.0, 6.0));
    }

    [Fact]
    public void The_propagated_uncertainty_agrees_with_a_finite_difference() =>
        Gen.Select(Gen.Double[5, 7], Gen.Double[0.01, 0.1], Gen.Double[0.3, 1], Gen.Bool).Sample((value, half, reach, grows) =>
        {
            var limit = grows ? 6 + reach : 6 - reach;
            var whole = new WearAllowance(6 - half, 6 + half, limit)
                .ShareUsed(new MeasuredValue(value, new UncertaintyBudget([])));
            double Share(double fresh) => (value - fresh) / (limit - fresh);
            var slope = (Share(6 + 1e-6) - Share(6 - 1e-6)) / 2e-6;
            Assert.Equal(Math.Abs(slope) * half / Math.Sqrt(3), whole.StandardUncertainty, 1e-6);
        });

    private static PartWear Wear(double value, double newLow, double newHigh, double limit) => PartWear.Of(
        MeasuredQuantity.From([Length.FromMillimeters(value)], new Instrument { ErrorLimit = Length.FromMicrometers(4) }),
        Length.FromMillimeters(newLow), Length.FromMillimeters(newHigh), Length.FromMillimeters(limit));
}
