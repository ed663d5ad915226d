using Layshaft.Book.Problems;

namespace Layshaft.Book.Tests;

/// <summary>Corner speeds of a car and an event, the wind, and efficiencies that need each other.</summary>
public class CornerCheckTests
{
    [Theory]
    [InlineData("{ venue: home-circuit, corner: Hairpn, corner_speed: 60 km/h }", "missing-reference", "'Hairpin'")]
    [InlineData("{ venue: home-circuit, corner: finish, corner_speed: 60 km/h }", "missing-reference", "Hairpin")]
    [InlineData("{ venue: home-circut, corner: Hairpin, corner_speed: 60 km/h }", "missing-reference", "'home-circuit'")]
    [InlineData("{ venue: home-circuit, corner: Hairpin }", "no-corner-speed", "exit_speed")]
    [InlineData("{ venue: home-circuit, corner: Hairpin, corner_speed: 60 km/h, exit_speed: 55 km/h }", "exit-below-corner", "at least")]
    [InlineData("{ venue: home-circuit, corner: Hairpin, exit_speed: 70 km/h }, { venue: home-circuit, corner: Hairpin, exit_speed: 71 km/h }", "corner-twice", "Remove")]
    public void A_mistake_in_a_cars_corners_is_a_problem(string corners, string code, string remedy)
    {
        var problem = Assert.Single(OfCar($"corners: [ {corners} ]"), p => p.Severity == Severity.Stops);
        Assert.Equal(code, problem.Code);
        Assert.Contains(remedy, problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Good_corners_are_taken() =>
        Assert.Empty(OfCar("corners: [ { venue: home-circuit, corner: Hairpin, corner_speed: 60 km/h, exit_speed: 70 km/h }, { venue: home-circuit, corner: Turn 1, exit_speed: 98 km/h } ]"));

    [Theory]
    [InlineData("rolling_resistance_doubles_at: 0 km/h", "not-positive")]
    [InlineData("axle_efficiency: 104 %", "share-out-of-range")]
    public void A_figure_outside_its_range_is_a_problem(string line, string code) => Assert.Contains(OfCar(line), p => p.Code == code);

    [Fact]
    public void Half_an_efficiency_is_noted() => Assert.Contains(OfCar("axle_efficiency: 95 %"), p => p is { Code: "half-efficiency", Severity: Severity.Notice });

    [Theory]
    [InlineData("wind_from: 240°", "no-wind", Severity.Stops)]
    [InlineData("wind: 15 km/h, wind_from: 240°", "no-heading", Severity.Notice)]
    [InlineData("wind: 15 km/h, wind_from: 400°", "bad-direction", Severity.Stops)]
    [InlineData("corners: [ { corner: Turn 9, exit_speed: 70 km/h } ]", "missing-reference", Severity.Stops)]
    public void A_mistake_in_an_event_is_a_problem(string fields, string code, Severity severity)
    {
        var found = Books.SmallWith("jobs/2026/0001/job.yaml", j => j + $"\nlast_event: {{ venue: home-circuit, {fields} }}\n").Problems;
        Assert.Contains(found, p => p.Code == code && p.Severity == severity);
    }

    [Fact]
    public void A_wind_without_a_direction_needs_no_heading() =>
        Assert.DoesNotContain(Books.SmallWith("jobs/2026/0001/job.yaml", j => j + "\nlast_event: { venue: home-circuit, wind: 15 km/h }\n").Problems, p => p.Code is "no-heading" or "no-wind");

    [Fact]
    public void A_launch_speed_is_below_the_limiter() => Assert.Contains(
        Books.SmallWith("cars/first-car.yaml", c => c.Replace("  limit:", "  launch: 20000 rpm\n  limit:", StringComparison.Ordinal)).Problems,
        p => p.Code == "range-out-of-order" && p.Message.Contains("launch", StringComparison.Ordinal));

    private static IReadOnlyList<Problem> OfCar(string line) => Books.SmallWith("cars/first-car.yaml", c => c + "\n" + line + "\n").Problems;
}
