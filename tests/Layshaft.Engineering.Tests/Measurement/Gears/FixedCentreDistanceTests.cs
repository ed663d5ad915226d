using CsCheck;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;
using static Layshaft.Engineering.Tests.Measurement.Gears.Gear;

namespace Layshaft.Engineering.Tests.Measurement.Gears;

public class FixedCentreDistanceTests
{
    private static readonly FixedCentreDistance Shafts = new(Mm(75), Mm(2.5), Angle.FromDegrees(20));

    [Fact]
    public void The_sums_around_the_unshifted_one_fit_and_far_ones_do_not()
    {
        var sums = Shafts.ToothSums().Select(fit => fit.ToothSum).ToArray();

        Assert.Contains(60, sums);
        Assert.Contains(59, sums);
        Assert.Contains(61, sums);
        Assert.DoesNotContain(50, sums);
        Assert.Equal(sums.Order(), sums);
    }

    [Fact]
    public void Every_reasonable_pair_runs_without_backlash_and_meets_the_limits() =>
        Gen.Select(Gen.Int[16, 44], Gen.Int[16, 44]).Sample((driver, driven) =>
        {
            if (Shafts.Fit(driver, driven) is not { IsReasonable: true, Pair: { } pair })
            {
                return;
            }

            Assert.Equal(0, pair.CircumferentialBacklash.Millimeters, 1e-9);
            Assert.True(pair.ContactRatio >= 1.2);
            Assert.True(pair.Driver.TipThickness >= 0.2 * Mm(2.5) && pair.Driven.TipThickness >= 0.2 * Mm(2.5));
            Assert.False(pair.Driver.IsUndercut || pair.Driven.IsUndercut);
        });

    [Fact]
    public void The_unshifted_sum_with_ordinary_gears_shares_equally()
    {
        var fit = Shafts.Fit(28, 32)!;

        Assert.True(fit.IsReasonable);
        Assert.Equal(0, fit.Pair!.Driver.ProfileShift, 1e-9);
        Assert.Equal(0, fit.Pair.Driven.ProfileShift, 1e-9);
    }

    [Fact]
    public void A_small_pinion_takes_shift_to_escape_undercut()
    {
        var fit = Shafts.Fit(14, 46)!;

        Assert.True(fit.IsReasonable);
        Assert.True(fit.Pair!.Driver.ProfileShift >= fit.Pair.Driver.LeastShiftWithoutUndercut);
        Assert.Equal(0, fit.Pair.Driver.ProfileShift + fit.Pair.Driven.ProfileShift, 1e-9);
    }

    [Fact]
    public void A_hopeless_sum_says_why()
    {
        Assert.Contains(FitTrouble.ExtremeShift, Shafts.Fit(26, 28)!.Troubles);
        Assert.NotEmpty(Shafts.Fit(6, 54)!.Troubles);
        Assert.Null(Shafts.Fit(40, 40));
    }

    [Fact]
    public void Swapping_a_pair_swaps_its_shifts() =>
        Gen.Select(Gen.Int[16, 40], Gen.Int[-1, 1]).Sample((driver, off) =>
        {
            var driven = 60 + off - driver;
            if (driver == driven || Shafts.Fit(driver, driven)?.Pair is not { } one)
            {
                return;
            }

            var other = Shafts.Fit(driven, driver)!.Pair!;
            Assert.Equal(one.Driver.ProfileShift, other.Driven.ProfileShift, 1e-9);
        });
}
