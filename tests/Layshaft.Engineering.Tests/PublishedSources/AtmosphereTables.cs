using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Air against tables of the standard atmosphere, of moist air, and the standards of power correction.</summary>
public class AtmosphereTables
{
    [Theory] // ICAO Doc 7488/3 as transcribed in the tests of a public atmosphere library (read); geometric altitude
    [InlineData(0, 288.15, 101325, 1.225)]
    [InlineData(1000, 281.651, 89876.3, 1.11166)]
    [InlineData(2000, 275.154, 79501.4, 1.00655)]
    public void Standard_air_at_geometric_altitudes(double metres, double kelvin, double pascal, double density)
    {
        AirState air = AirState.Standard(Length.FromMeters(metres)).Require();
        Assert.Equal(kelvin, air.Temperature.Kelvins, 5e-4);
        Assert.Equal(pascal, air.Pressure.Pascals, 5e-2);
        Assert.Equal(density, air.Density.KilogramsPerCubicMeter, 5e-6);
    }

    [Theory] // a public 100 m-step table (read); geopotential altitude
    [InlineData(400, 96611.1, 0.1)]
    [InlineData(500, 95460.8, 0.1)]
    [InlineData(1000, 89874.6, 0.1)]
    [InlineData(1500, 84556, 0.5)]
    [InlineData(3000, 70108.5, 0.1)] // ISO 2533 tables, from memory
    public void Standard_pressure_at_geopotential_altitudes(double metres, double pascal, double tolerance) => Assert.InRange(
        AirState.StandardGeopotential(Length.FromMeters(metres)).Require().Pressure.Pascals, pascal - tolerance, pascal + tolerance);

    [Theory]
    [InlineData(1000, 1.11164)] // a public test file (read)
    [InlineData(500, 1.16727)] // these: ISO 2533 tables, from memory
    [InlineData(1500, 1.05807)]
    [InlineData(2000, 1.00649)]
    [InlineData(3000, 0.90912)]
    public void Standard_density_at_geopotential_altitudes(double metres, double density) => Assert.Equal(
        density, AirState.StandardGeopotential(Length.FromMeters(metres)).Require().Density.KilogramsPerCubicMeter, 5);

    [Theory] // constructionwork.com, density of moist air, 760 mmHg, dew point 10 °C (read: the table, not the formula beside it)
    [InlineData(10, 1.241)]
    [InlineData(20, 1.199)]
    [InlineData(40, 1.122)]
    [InlineData(60, 1.055)]
    public void Moist_air(double celsius, double density)
    {
        double computed = AirState.FromDewPoint(
            Pressure.FromMillimetersOfMercury(760), Temperature.FromDegreesCelsius(celsius), Temperature.FromDegreesCelsius(10))
            .Require().Density.KilogramsPerCubicMeter;
        Assert.InRange(computed, density - 0.001, density + 0.001);
    }

    [Fact]
    public void Iso_1585_is_one_in_its_reference_air() // ISO 1585 / UN R85, from memory: 99 kPa dry, 298 K
    {
        Assert.Equal(1, PowerCorrection.Factor(PowerStandard.Iso1585, Dry(99, 25)), 5e-10);
        Assert.Equal(1.0351, PowerCorrection.Factor(PowerStandard.Iso1585, Dry(97, 30)), 5e-5); // derived from the formula
    }

    [Fact]
    public void Sae_J1349_is_one_in_its_reference_air() => // SAE J1349, from memory: 990 mbar dry, 25 °C
        Assert.Equal(1, PowerCorrection.Factor(PowerStandard.SaeJ1349, Dry(99, 25)), 5e-10);

    [Fact]
    public void The_std_correction() // diy-efi mailing list, March 1995: formula read, the figure derived
    {
        AirState air = AirState.FromReadings(
            Pressure.FromPascals(29.0 * 3386.389), Temperature.FromDegreesFahrenheit(80)).Require(); // 29.5 inHg less 0.5 of vapour
        Assert.Equal(1.0514, PowerCorrection.Factor(PowerStandard.Std, air), 5e-5);
    }

    [Fact]
    public void Din_70020() => // from memory; the figure derived
        Assert.Equal(1.0512, PowerCorrection.Factor(PowerStandard.Din70020, Dry(98, 30)), 5e-5);

    private static AirState Dry(double kilopascal, double celsius) =>
        AirState.FromReadings(Pressure.FromKilopascals(kilopascal), Temperature.FromDegreesCelsius(celsius)).Require();
}
