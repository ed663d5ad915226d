using Layshaft.Book.Values;

namespace Layshaft.Book.Tests.PublishedSources;

/// <summary>
/// The factors behind the units that a book may use. Source: NIST Special Publication 811, Guide for the Use of the SI,
/// Appendix B.8 (factors printed bold are exact), unless a line says otherwise.
/// </summary>
public class UnitFactorTests
{
    [Theory]
    [InlineData("1 in", 0.0254, 0)]
    [InlineData("1 ft", 0.3048, 0)]
    [InlineData("1 mi", 1609.344, 0)]
    [InlineData("1000 thou", 0.0254, 1e-12)] // a thou is a thousandth of an inch: common practice, no source
    [InlineData("1 µm", 1e-6, 0)] // SI prefix
    public void Lengths_are_those_of_sp_811(string text, double metres, double relative) =>
        Near(metres, UnitWords.Length.Parse(text).Value.Meters, relative);

    [Fact]
    public void A_mile_an_hour_is_0_44704_metres_a_second_exactly() => Near(0.44704, UnitWords.Speed.Parse("1 mph").Value.MetersPerSecond, 1e-12);

    [Fact]
    public void A_pound_is_that_of_sp_811_to_seven_figures() => Near(4.535924e-1, UnitWords.Mass.Parse("1 lb").Value.Kilograms, 1e-7);

    [Fact]
    public void A_pound_force_is_a_pound_times_standard_gravity() => Near(4.4482216152605, UnitWords.Force.Parse("1 lbf").Value.Newtons, 1e-12);

    [Theory]
    [InlineData("1 lbf·in", 1.129848e-1, 1e-6)]
    [InlineData("1 lbf·ft", 1.355818, 1e-6)] // SP 811, from memory; follows from 12 lbf·in
    public void Torques_are_those_of_sp_811(string text, double newtonMetres, double relative) =>
        Near(newtonMetres, UnitWords.Torque.Parse(text).Value.NewtonMeters, relative);

    [Theory]
    [InlineData("1 psi", 6.894757e3, 1e-6)]
    [InlineData("1 bar", 1e5, 0)]
    [InlineData("1 inHg", 3.386389e3, 1e-5)]
    public void Pressures_are_those_of_sp_811(string text, double pascals, double relative) =>
        Near(pascals, UnitWords.Pressure.Parse(text).Value.Pascals, relative);

    [Theory]
    [InlineData("1 hp", 7.456999e2, 1e-6)]
    [InlineData("1 PS", 7.354988e2, 1e-6)]
    public void Powers_are_those_of_sp_811(string text, double watts, double relative) =>
        Near(watts, (double)UnitWords.Power.Parse(text).Value.Watts, relative);

    [Theory]
    [InlineData("212 °F", 100)]
    [InlineData("32 °F", 0)]
    [InlineData("59 °F", 15)]
    public void Fahrenheit_follows_its_definition(string text, double celsius) => // definition, from memory
        Assert.Equal(celsius, UnitWords.Temperature.Parse(text).Value.DegreesCelsius, 5e-10);

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - Math.Max(relative, 1e-15) * expected, expected + Math.Max(relative, 1e-15) * expected);
}
