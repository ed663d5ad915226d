using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class RollingTyreTests
{
    private static readonly TyreSize s_size = TyreSize.Parse("205/55R16 91V").Require();

    [Fact]
    public void A_measured_circumference_overrules_the_size_but_keeps_its_speed_symbol()
    {
        RollingTyre tyre = RollingTyre.FromMeasured(Length.FromMillimeters(1905), size: s_size).Require();
        Assert.Equal(CircumferenceBasis.Measured, tyre.Basis);
        Assert.Equal(1905, tyre.Circumference.Millimeters, 5e-10);
        Assert.Equal("V", tyre.SpeedSymbol!.Symbol);
    }

    [Fact]
    public void Wear_takes_twice_the_factor_off_the_circumference()
    {
        RollingTyre worn = RollingTyre.FromSize(s_size, new RollingState { Wear = Length.FromMillimeters(5) }).Require();
        Assert.Equal(3.05 * (632 - 10), worn.Circumference.Millimeters, 5e-7);
    }

    [Fact]
    public void Growth_is_what_was_given_at_its_speed_and_a_quarter_at_half()
    {
        RollingTyre tyre = RollingTyre.FromMeasured(
            Length.FromMeters(2), new RollingState { Growth = 0.04, GrowthAt = Speed.FromMetersPerSecond(60) }).Require();
        Assert.Equal(2.08, tyre.CircumferenceAt(Speed.FromMetersPerSecond(60)).Meters, 5e-13);
        Assert.Equal(2.02, tyre.CircumferenceAt(Speed.FromMetersPerSecond(30)).Meters, 5e-13);
    }

    [Fact]
    public void Wheel_speed_and_road_speed_are_each_others_inverse_with_slip_growth_and_wear() => Gen.Select(
            Gen.Double[0, 0.3], Gen.Double[0, 0.15], Gen.Double[0, 20], Gen.Double[0, 145], Gen.Double[1.2, 2.6])
        .Sample((slip, growth, wear, speed, circumference) =>
        {
            var state = new RollingState
            {
                Slip = slip,
                Growth = growth,
                GrowthAt = Speed.FromMetersPerSecond(Math.Max(60, 150 * Math.Sqrt(growth))),
                Wear = Length.FromMillimeters(wear),
            };
            RollingTyre tyre = RollingTyre.FromMeasured(Length.FromMeters(circumference), state).Require();
            double back = tyre.SpeedAt(tyre.WheelSpeedAt(Speed.FromMetersPerSecond(speed))).MetersPerSecond;
            Assert.Equal(speed, back, tolerance: 1e-6);
        });

    [Fact]
    public void Steep_growth_at_low_speed_is_a_fault_since_one_engine_speed_would_mean_two_road_speeds()
    {
        GearingFault fault = Assert.Single(RollingTyre.FromSize(
            s_size, new RollingState { Growth = 0.1, GrowthAt = Speed.FromMetersPerSecond(20) }).Faults);
        Assert.Equal(GearingFaultKind.GrowthTooSteep, fault.Kind);
        Assert.Contains("47.4342 m/s or more", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(9)]
    public void An_impossible_circumference_is_a_fault(double metres) =>
        Assert.Equal("circumference", RollingTyre.FromMeasured(Length.FromMeters(metres)).Faults[0].Subject);
}
