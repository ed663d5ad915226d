using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Units that the gearing uses, against NIST SP 811, appendix B.8 (read), unless a test says otherwise.
/// </summary>
public class UnitFactorsFromSp811
{
    [Fact]
    public void Inch_foot_mile_and_mile_per_hour_are_exact()
    {
        Assert.Equal(0.0254, Length.FromInches(1).Meters, 5e-16);
        Assert.Equal(0.3048, Length.FromFeet(1).Meters, 5e-16);
        Assert.Equal(1609.344, Length.FromMiles(1).Meters, 5e-11);
        Assert.Equal(0.44704, Speed.FromMilesPerHour(1).MetersPerSecond, 5e-15);
        Assert.Equal(1.609344, Speed.FromMilesPerHour(1).KilometersPerHour, 5e-14);
    }

    [Fact]
    public void Pound_has_seven_printed_figures()
    {
        Assert.Equal(0.4535924, Mass.FromPounds(1).Kilograms, 5e-8);
    }

    [Fact]
    public void Pound_is_that_of_the_1959_agreement() // International Yard and Pound Agreement, from memory
    {
        Assert.Equal(0.45359237, Mass.FromPounds(1).Kilograms, 5e-15);
    }

    [Fact]
    public void Pressure_units_agree()
    {
        Assert.Equal(6894.757, Pressure.FromPoundsForcePerSquareInch(1).Pascals, 5e-4);
        Assert.Equal(101325, Pressure.FromAtmospheres(1).Pascals, 5e-10);
        Assert.Equal(100000, Pressure.FromBars(1).Pascals, 5e-10);
        Assert.Equal(3386.389, Pressure.FromInchesOfMercury(1).Pascals, 5e-3);
        Assert.Equal(133.3224, Pressure.FromMillimetersOfMercury(1).Pascals, 5e-5);
    }

    [Fact]
    public void Mechanical_and_metric_horsepower_agree()
    {
        Assert.Equal(745.6999, Horsepower.MechanicalWatts, 5e-5);
        Assert.Equal(735.49875, Horsepower.MetricWatts, 5e-11);
        Assert.Equal(1.013869665424, Horsepower.MechanicalWatts / Horsepower.MetricWatts, 5e-13);
        Assert.Equal(1, Horsepower.Mechanical(Power.FromWatts(745.69987158227022)), 5e-13);
        Assert.Equal(100, Horsepower.Metric(Horsepower.FromMetric(100)), 5e-13);
        Assert.Equal(100, Horsepower.Mechanical(Horsepower.FromMechanical(100)), 5e-13);
    }

    [Fact]
    public void Pound_force_inch_and_pound_force_agree()
    {
        Assert.Equal(0.1129848, Torque.FromPoundForceInches(1).NewtonMeters, 5e-8);
        Assert.Equal(4.4482216152605, Force.FromPoundsForce(1).Newtons, 5e-13); // exact by definition, g = 9.80665
    }

    [Fact]
    public void A_revolution_is_two_pi()
    {
        Assert.Equal(6.283185, Angle.FromRevolutions(1).Radians, 5e-7);
        Assert.Equal(2 * Math.PI / 60, RotationalSpeed.FromRevolutionsPerMinute(1).RadiansPerSecond, 5e-13);
    }

    [Fact]
    public void Horsepower_from_pound_feet_and_rpm_has_the_constant_5252() // arithmetic; rounded 5252 read in a public thread
    {
        double watts = Torque.FromPoundForceFeet(1).NewtonMeters * RotationalSpeed.FromRevolutionsPerMinute(1).RadiansPerSecond;
        Assert.Equal(5252.113, Horsepower.MechanicalWatts / watts, 5e-4);
    }

    [Theory]
    [InlineData(212, 100)]
    [InlineData(32, 0)]
    [InlineData(59, 15)]
    public void Fahrenheit_agrees(double fahrenheit, double celsius) // definition, from memory
    {
        Assert.Equal(celsius, Temperature.FromDegreesFahrenheit(fahrenheit).DegreesCelsius, 5e-10);
    }
}
