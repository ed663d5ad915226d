using CsCheck;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using Layshaft.Engineering.Settings.Differentials;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Settings.Differentials;

public class PlateDifferentialTests
{
    private static readonly PlatePack Pack = new(Length.FromMillimeters(110), Length.FromMillimeters(78), 0.10, 4);
    private static readonly ForcePerLength Rate = ForcePerLength.FromNewtonsPerMillimeter(2000);
    private static readonly Length Radius = Length.FromMillimeters(34);

    [Theory]
    [InlineData("OIOIO", 4)]
    [InlineData("IOIOI", 6)]
    [InlineData("OOIIO", 2)]
    [InlineData("OIIOIO", 4)]
    [InlineData("O", 0)]
    [InlineData("I", 2)]
    public void A_face_lies_between_what_turns_with_the_case_and_what_turns_with_the_side_gear(string order, int faces) =>
        Assert.Equal(faces, new PlateOrder([.. order.Select(c => c == 'O' ? PlateTurning.WithCase : PlateTurning.WithSideGear)]).Faces);

    [Fact]
    public void Preload_and_breakaway_undo_each_other() => Gen.Double[1, 20_000].Sample(newtons =>
        Assert.Equal(newtons, Pack.PreloadFor(Pack.BreakawayAt(Force.FromNewtons(newtons))).Newtons, 1e-6));

    [Fact]
    public void A_flatter_ramp_locks_more_and_a_ramp_of_90_degrees_does_not_push() =>
        Gen.Select(Gen.Double[15, 85], Gen.Double[0.1, 4]).Sample((angle, more) =>
            Assert.True(Pack.LockingValue(Angle.FromDegrees(angle), Radius) > Pack.LockingValue(Angle.FromDegrees(angle + more), Radius)
                || Pack.LockingValue(Angle.FromDegrees(angle + more), Radius) == 1));

    [Fact]
    public void Ramps_of_90_degrees_do_not_lock() => Assert.Equal(0, Pack.LockingValue(Angle.FromDegrees(90), Radius));

    // Statics: 400 N·m into the case, half to each pressure ring, thrust 400/(2·0.034·tan 45°) = 5882 N; four faces at 47 mm and
    // 0.10 hold 110.6 N·m a side; the shafts differ by twice that, 55 % of 400 N·m.
    [Fact]
    public void The_locking_value_is_that_of_the_forces()
    {
        var thrust = 400 / (2 * 0.034);

        Assert.Equal(2 * Pack.BreakawayAt(Force.FromNewtons(thrust)).NewtonMeters / 400, Pack.LockingValue(Angle.FromDegrees(45), Radius), 1e-9);
    }

    [Fact]
    public void The_locking_value_never_exceeds_a_locked_axle() =>
        Assert.Equal(1, new PlatePack(Length.FromMillimeters(110), Length.FromMillimeters(78), 0.15, 12).LockingValue(Angle.FromDegrees(20), Radius));

    [Theory]
    [InlineData(78, 110, 0.1, 4)]
    [InlineData(110, 0, 0.1, 4)]
    [InlineData(110, 78, 0, 4)]
    [InlineData(110, 78, 1.1, 4)]
    [InlineData(110, 78, 0.1, 0)]
    public void Impossible_plates_are_refused(double outer, double inner, double friction, int faces) =>
        Assert.ThrowsAny<ArgumentException>(() => new PlatePack(Length.FromMillimeters(outer), Length.FromMillimeters(inner), friction, faces));

    // 4 × 0.10 × 0.047 m × 2000 N/mm: 37.6 N·m for each millimetre of shim, 3.76 N·m for 0.1 mm.
    [Fact]
    public void A_trial_leads_to_a_pack_within_the_band()
    {
        var shims = Shims();

        Assert.Equal(3.76, shims.PerTenth.NewtonMeters, 1e-9);
        var best = shims.Packs[0];
        Assert.Equal(52 + (37.6 * (best.Pack.Thickness.Millimeters - 1.0)), best.Expected.NewtonMeters, 0.01);
        Assert.InRange(best.Expected.NewtonMeters, 64, 72);
    }

    // The trial is 16 N·m short: a fifth of that is more than the 3 N·m that the wrench does not know.
    [Fact]
    public void The_expected_torque_is_no_surer_than_friction_and_spring()
    {
        var best = Shims().Packs[0];

        Assert.True(best.Uncertainty.NewtonMeters >= 0.2 * (best.Expected.NewtonMeters - 52));
        Assert.Equal(Conformity.TooCloseToCall, best.Conformity);
    }

    private static BreakawayShims Shims() => BreakawayShims.For(
        Pack,
        Rate,
        new TrialBuild(
            Length.FromMillimeters(1.0),
            Length.FromMillimeters(0.003),
            MeasuredQuantity.From([Torque.FromNewtonMeters(52)], new Instrument { Resolution = Torque.FromNewtonMeters(1), ErrorLimit = Torque.FromNewtonMeters(3) })),
        Torque.FromNewtonMeters(64),
        Torque.FromNewtonMeters(72),
        ShimEffect.Increases,
        [new ShimStock(Length.FromMillimeters(1.0), 2, Length.FromMillimeters(0.005)), new ShimStock(Length.FromMillimeters(0.2), 4, Length.FromMillimeters(0.005)), new ShimStock(Length.FromMillimeters(0.1), 4, Length.FromMillimeters(0.005))]);
}
