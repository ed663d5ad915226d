using CsCheck;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Measurement.Gears;

/// <summary>Tooth thickness lost, found again from what a worn gear measures.</summary>
public class ToothWearTests
{
    private static readonly Instrument Gauge = new() { ErrorLimit = Length.FromMillimeters(0.004) };

    private static readonly Gen<SpurGear> Gears =
        from teeth in Gen.Int[16, 45]
        from shift in Gen.Double[0, 0.5]
        select new SpurGear(teeth, Length.FromMillimeters(3), Angle.FromDegrees(20), shift);

    private static MeasuredQuantity Reading(Length value) => MeasuredQuantity.From([value], Gauge);

    [Fact]
    public void A_span_gives_back_the_thickness_that_was_taken_off() => Gen.Select(Gears, Gen.Double[0, 0.3]).Sample((gear, lostMm) =>
    {
        var k = BaseTangentSpan.BestTeethSpanned(gear);
        var worn = gear with { ToothThinning = Length.FromMillimeters(lostMm) };

        var loss = ToothWear.FromSpan(gear.PressureAngle, BaseTangentSpan.Over(gear, k), Reading(BaseTangentSpan.Over(worn, k)));

        Assert.Equal(lostMm, loss.Number.Value, 5e-10);
        Assert.Equal(0.004 / Math.Sqrt(3) / Math.Cos(gear.PressureAngle.Radians), loss.Number.StandardUncertainty, 5e-10);
    });

    [Fact]
    public void A_size_over_pins_gives_back_the_thickness_that_was_taken_off() => Gen.Select(Gears, Gen.Double[0, 0.2]).Sample((gear, lostMm) =>
    {
        var pin = SizeOverPins.IdealPin(gear) * 1.05;
        var worn = gear with { ToothThinning = Length.FromMillimeters(lostMm) };

        var loss = ToothWear.FromPins(gear, pin, SizeOverPins.Over(gear, pin), Reading(SizeOverPins.Over(worn, pin)));

        Assert.Equal(lostMm, loss.Number.Value, 5e-7);
        Assert.InRange(loss.Number.StandardUncertainty, 0.0005, 0.004);
    });

    [Fact]
    public void A_span_gives_back_the_profile_shift() => Gears.Sample(gear =>
    {
        var k = BaseTangentSpan.BestTeethSpanned(gear);

        var found = ShiftFromSpan.GearOf(gear.Teeth, gear.Module, gear.PressureAngle, k, BaseTangentSpan.Over(gear, k));

        Assert.Equal(gear.ProfileShift, found!.ProfileShift, 5e-10);
    });

    [Fact]
    public void A_span_of_no_such_gear_gives_none()
    {
        Assert.Null(ShiftFromSpan.GearOf(19, Length.FromMillimeters(3), Angle.FromDegrees(20), 2, Length.FromMillimeters(33)));
        Assert.Null(ShiftFromSpan.GearOf(19, Length.FromMillimeters(3), Angle.FromDegrees(20), 19, Length.FromMillimeters(33)));
    }
}
