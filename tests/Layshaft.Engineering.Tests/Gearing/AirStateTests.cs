using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class AirStateTests
{
    [Fact]
    public void Damp_air_is_lighter_than_dry_and_warm_air_lighter_than_cold() => Gen.Select(
            Gen.Double[0, 3000], Gen.Double[-20, 45], Gen.Double[0.1, 1])
        .Sample((altitude, celsius, humidity) =>
        {
            Length at = Length.FromMeters(altitude);
            AirState dry = AirState.AtAltitude(at, Temperature.FromDegreesCelsius(celsius)).Require();
            AirState damp = AirState.AtAltitude(at, Temperature.FromDegreesCelsius(celsius), humidity).Require();
            AirState warmer = dry.Warmer(TemperatureDelta.FromKelvins(10)).Require();
            return damp.Density < dry.Density && warmer.Density < dry.Density && damp.Density.KilogramsPerCubicMeter > 0;
        });

    [Fact]
    public void A_weather_report_of_1013_25_hPa_is_the_standard_atmosphere()
    {
        AirState air = AirState.FromWeatherReport(
            Pressure.FromHectopascals(1013.25), Length.FromMeters(800), Temperature.FromDegreesCelsius(20)).Require();
        Assert.Equal(AirState.Standard(Length.FromMeters(800)).Require().Pressure.Pascals, air.Pressure.Pascals, 5e-7);
        Assert.True(AirState.FromWeatherReport(
            Pressure.FromHectopascals(1000), Length.FromMeters(800), Temperature.FromDegreesCelsius(20)).Require().Pressure < air.Pressure);
    }

    [Theory]
    [InlineData(0, 20, 0.5, "pressure")]
    [InlineData(1013, 80, 0.5, "temperature")]
    [InlineData(1013, 20, 55, "humidity")]
    [InlineData(1013, 20, -0.1, "humidity")]
    public void Impossible_readings_are_faults(double hectopascal, double celsius, double humidity, string subject) => Assert.Contains(
        AirState.FromReadings(Pressure.FromHectopascals(hectopascal), Temperature.FromDegreesCelsius(celsius), humidity).Faults,
        fault => fault.Subject == subject);

    [Fact]
    public void Thin_warm_air_takes_torque_and_the_engine_gives_the_curve_in_reference_air()
    {
        AirState hot = AirState.AtAltitude(Length.FromMeters(1500), Temperature.FromDegreesCelsius(35), 0.5).Require();
        double factor = PowerCorrection.Factor(PowerStandard.Iso1585, hot);
        Assert.True(factor > 1.07);
        Assert.False(PowerCorrection.IsWithinStandard(PowerStandard.Iso1585, factor));
        Assert.Equal(1 / factor, new Conditions(hot, PowerStandard.Iso1585).TorqueFactor, 5e-13);
        Assert.Equal(1, new Conditions(hot).TorqueFactor);
    }
}
