using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;
using static Layshaft.Engineering.Tests.Measurement.Gears.Gear;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Values worked out apart from this project from the relations of ISO 21771; status of each: derived, no printed source.</summary>
public class DerivedGearValueTests
{
    private static readonly FixedCentreDistance Shafts = new(Mm(75), Mm(2.5), Angle.FromDegrees(20));

    [Fact]
    public void Contact_ratio_of_the_shifted_pair_is_1_20210()
    {
        var pair = GearPair.AtShiftedDistance(Of(12, 3, 0.6), Of(24, 3, 0.36)).WithFullTipClearance();

        Assert.Equal(1.20210, pair.ContactRatio, 5e-6);
    }

    [Fact]
    public void Contact_ratio_by_tip_circles_of_the_unshifted_pair_is_1_51112_though_it_interferes()
    {
        var pair = GearPair.AtShiftedDistance(Of(12, 3), Of(24, 3));

        Assert.Equal(1.51112, pair.TipCircleContactRatio, 5e-6);
        Assert.True(pair.Driver.IsUndercut);
        Assert.True(pair.Interferes);
        Assert.True(pair.ContactRatio < pair.TipCircleContactRatio);
    }

    [Fact]
    public void Size_over_pins_with_an_odd_number_of_teeth_is_23_23594() =>
        Assert.Equal(23.23594, SizeOverPins.Over(Of(21, 1), Mm(1.7)).Millimeters, 5e-6);

    [Fact]
    public void One_tooth_more_adds_one_base_pitch_of_8_85639() =>
        Assert.Equal(8.85639, (BaseTangentSpan.Over(Of(24, 3, 0.4), 4) - BaseTangentSpan.Over(Of(24, 3, 0.4), 3)).Millimeters, 1e-5);

    [Fact]
    public void A_span_0_0706_short_means_a_tooth_0_0751_thinner() =>
        Assert.Equal(0.0751, BaseTangentSpan.ThicknessLoss(Angle.FromDegrees(20), Mm(32.8266 - 32.756)).Millimeters, 5e-5);

    [Theory]
    [InlineData(60, 20.0, 0, 0)]
    [InlineData(59, 22.4773, 0.530249, 0.5)]
    [InlineData(61, 17.1853, -0.467078, -0.5)]
    public void Tooth_sums_on_75_mm_need_these_shifts(int sum, double angleDeg, double shiftSum, double factor)
    {
        var fit = Shafts.ForSum(sum)!;

        Assert.Equal(angleDeg, fit.WorkingPressureAngle.Degrees, 5e-5);
        Assert.Equal(shiftSum, fit.ShiftSum, 5e-6);
        Assert.Equal(factor, fit.CentreDistanceFactor, 1e-9);
    }

    [Fact]
    public void Moving_the_axes_apart_by_0_05_opens_0_036558_of_backlash()
    {
        var pair = new GearPair(Of(12, 3), Of(24, 3), Mm(54.05));

        Assert.Equal(0.036558, pair.CircumferentialBacklash.Millimeters, 5e-7);
        Assert.Equal(2 * 0.05 * Math.Tan(Math.PI / 9), pair.CircumferentialBacklash.Millimeters, 2e-4); // first order: 0.036397
    }

    [Fact]
    public void Normal_backlash_at_20_degrees_is_0_939693_of_the_circumferential()
    {
        var pair = new GearPair(
            Of(30, 3) with { ToothThinning = Mm(0.1) }, Of(30, 3), Mm(90));

        Assert.Equal(0.939693, pair.NormalBacklash / pair.CircumferentialBacklash, 1e-6);
        Assert.Equal(0.1, pair.CircumferentialBacklash.Millimeters, 1e-9);
    }
}
