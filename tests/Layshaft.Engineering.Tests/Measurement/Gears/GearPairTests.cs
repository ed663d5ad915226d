using CsCheck;
using Layshaft.Engineering.Measurement.Gears;
using static Layshaft.Engineering.Tests.Measurement.Gears.Gear;

namespace Layshaft.Engineering.Tests.Measurement.Gears;

public class GearPairTests
{
    [Fact]
    public void At_the_shifted_distance_there_is_no_backlash_and_thinning_opens_it() =>
        Gen.Select(Gen.Int[14, 50], Gen.Int[14, 50], Gen.Double[-0.3, 0.6], Gen.Double[-0.3, 0.6], Gen.Double[0, 0.2]).Sample(
            (z1, z2, x1, x2, worn) =>
            {
                var tight = GearPair.AtShiftedDistance(Of(z1, 2.5, x1), Of(z2, 2.5, x2));
                var used = new GearPair(tight.Driver with { ToothThinning = Mm(worn) }, tight.Driven, tight.CentreDistance);
                var onWorkingCircle = worn * (tight.DriverWorkingDiameter / tight.Driver.PitchDiameter);
                Assert.Equal(0, tight.CircumferentialBacklash.Millimeters, 1e-9);
                Assert.Equal(onWorkingCircle, used.CircumferentialBacklash.Millimeters, 1e-9);
            });

    [Fact]
    public void Swapping_the_gears_changes_neither_backlash_nor_contact_ratio() =>
        Gen.Select(Gen.Int[14, 50], Gen.Int[14, 50], Gen.Double[0.01, 0.3]).Sample((z1, z2, apart) =>
        {
            var distance = Mm((2.5 * (z1 + z2) / 2) + apart);
            var one = new GearPair(Of(z1, 2.5), Of(z2, 2.5), distance);
            var other = new GearPair(Of(z2, 2.5), Of(z1, 2.5), distance);
            Assert.Equal(one.CircumferentialBacklash.Millimeters, other.CircumferentialBacklash.Millimeters, 1e-9);
            Assert.Equal(one.ContactRatio, other.ContactRatio, 1e-9);
        });

    [Fact]
    public void Undercut_begins_below_18_teeth_at_20_degrees()
    {
        Assert.True(Of(17, 2).IsUndercut);
        Assert.False(Of(18, 2).IsUndercut);
        Assert.False(Of(17, 2, 0.01).IsUndercut);
    }

    [Fact]
    public void Gears_of_different_modules_and_axes_too_close_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new GearPair(Of(20, 2), Of(20, 2.5), Mm(45)));
        Assert.Throws<ArgumentException>(() => new GearPair(Of(20, 2), Of(20, 2), Mm(37)));
    }

    [Fact]
    public void A_measured_tooth_thickness_replaces_the_drawn_one()
    {
        var worn = (Of(24, 3, 0.4) with { ToothThinning = Mm(0.02) }).WithToothThickness(Mm(5.4));

        Assert.Equal(5.4, worn.ToothThickness.Millimeters, 1e-12);
        Assert.Equal(Of(24, 3, 0.4).ToothThickness.Millimeters - 5.4, worn.ToothThinning.Millimeters, 1e-12);
    }
}
