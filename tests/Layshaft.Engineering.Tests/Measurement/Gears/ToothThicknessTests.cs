using CsCheck;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Measurement.Gears;
using UnitsNet;
using static Layshaft.Engineering.Tests.Measurement.Gears.Gear;

namespace Layshaft.Engineering.Tests.Measurement.Gears;

public class ToothThicknessTests
{
    private static readonly double[] Angles = [14.5, 20, 25, 28];

    private static readonly Gen<SpurGear> Gears =
        Gen.Select(Gen.Int[14, 60], Gen.Double[1, 6], Gen.Double[0, 0.6], Gen.Int[0, 3].Select(i => Angles[i]), Gen.Double[0, 0.1])
            .Select((z, m, x, angle, thin) => Of(z, m, x, angle) with { ToothThinning = Mm(thin * m) });

    [Fact]
    public void Pins_and_span_find_the_same_tooth_thickness() =>
        Gears.Sample(gear =>
        {
            var k = BaseTangentSpan.BestTeethSpanned(gear);
            var pin = SizeOverPins.IdealPin(gear);
            var drawn = gear with { ToothThinning = Length.Zero };
            var bySpan = BaseTangentSpan.ToothThickness(drawn, k, BaseTangentSpan.Over(gear, k));
            var byPins = SizeOverPins.ToothThickness(drawn, pin, SizeOverPins.Over(gear, pin));
            Assert.Equal(gear.ToothThickness.Millimeters, bySpan.Millimeters, 1e-9);
            Assert.Equal(bySpan.Millimeters, byPins.Millimeters, 1e-8);
        });

    [Fact]
    public void The_span_is_that_of_the_usual_formula_with_profile_shift() =>
        Gears.Sample(gear =>
        {
            // W = m·cos α(π(k - 0.5) + z·inv α) + 2x·m·sin α, for teeth that were not thinned (DIN 3960; from memory).
            var drawn = gear with { ToothThinning = Length.Zero };
            var (m, a, k) = (gear.Module.Millimeters, gear.PressureAngle.Radians, BaseTangentSpan.BestTeethSpanned(gear));
            var expected = (m * Math.Cos(a) * ((Math.PI * (k - 0.5)) + (gear.Teeth * (Math.Tan(a) - a))))
                + (2 * gear.ProfileShift * m * Math.Sin(a));
            Assert.Equal(expected, BaseTangentSpan.Over(drawn, k).Millimeters, 1e-9);
        });

    [Fact]
    public void The_best_span_touches_the_involute_of_a_gear_that_is_not_undercut() =>
        Gears.Where(gear => !gear.IsUndercut && gear.Teeth >= 18).Sample(gear =>
            Assert.True(BaseTangentSpan.CanSpan(gear, BaseTangentSpan.BestTeethSpanned(gear)), gear.ToString()));

    [Fact]
    public void The_ideal_pin_touches_the_flanks_on_the_shifted_pitch_circle() =>
        Gears.Sample(gear =>
        {
            var pin = SizeOverPins.IdealPin(gear);
            var centreRad = SizeOverPins.PinCentrePressureAngle(gear, pin).Radians;
            var contact = gear.BaseDiameter / Math.Cos(Math.Atan(Math.Tan(centreRad) - (pin / gear.BaseDiameter)));
            Assert.Equal((gear.PitchDiameter + (2 * gear.ProfileShift * gear.Module)).Millimeters, contact.Millimeters, 1e-8);
        });

    [Fact]
    public void A_worn_tooth_makes_both_sizes_smaller_by_what_the_slopes_say() =>
        Gears.Sample(gear =>
        {
            var worn = gear with { ToothThinning = gear.ToothThinning + Mm(1e-5) };
            var k = BaseTangentSpan.BestTeethSpanned(gear);
            var pin = SizeOverPins.IdealPin(gear);
            var size = new Instrument { Repeatability = Length.FromMicrometers(1) };
            var bySpan = BaseTangentSpan.ToothThickness(gear, k, MeasuredQuantity.From([BaseTangentSpan.Over(gear, k)], size));
            var byPins = SizeOverPins.ToothThickness(gear, pin, MeasuredQuantity.From([SizeOverPins.Over(gear, pin)], size));
            var spanSlope = 1e-5 / (BaseTangentSpan.Over(gear, k) - BaseTangentSpan.Over(worn, k)).Millimeters;
            var pinSlope = 1e-5 / (SizeOverPins.Over(gear, pin) - SizeOverPins.Over(worn, pin)).Millimeters;
            Assert.Equal(spanSlope, Micrometres(bySpan), 1e-5);
            Assert.Equal(pinSlope, Micrometres(byPins), 1e-3);
        });

    [Theory]
    [InlineData(1.7, PinFit.Good)]
    [InlineData(0.9, PinFit.RestsOnRoot)]
    [InlineData(3.6, PinFit.TouchesTip)]
    public void A_pin_that_does_not_suit_is_told(double pinMm, PinFit expected) =>
        Assert.Equal(expected, SizeOverPins.Fit(Of(20, 1), Mm(pinMm)));

    [Fact]
    public void Impossible_pins_spans_and_gears_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SizeOverPins.Over(Of(20, 1), Mm(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SizeOverPins.Over(Of(20, 1), Mm(0.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SizeOverPins.ToothThickness(Of(20, 1), Mm(1.7), Mm(19)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BaseTangentSpan.Over(Of(20, 1), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BaseTangentSpan.Over(Of(20, 1), 20));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(4, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(20, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(20, 1, 0, 40));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(20, 1, double.NaN));
        var torque = MeasuredQuantity.From([Torque.FromNewtonMeters(1)], Instrument.Unknown);
        Assert.Throws<ArgumentException>(() => BaseTangentSpan.ToothThickness(Of(20, 1), 3, torque));
    }

    private static double Micrometres(MeasuredQuantity measured) =>
        measured.StandardUncertainty.As(UnitsNet.Units.LengthUnit.Micrometer);
}
