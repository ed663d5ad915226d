using Layshaft.Book.Problems;

namespace Layshaft.Book.Tests;

/// <summary>A trial, the pack fitted after it and the value as built must agree.</summary>
public class PackCheckTests
{
    // The small book's micrometer: ±0.002 mm. Trial 0.16 mm with 0.50 mm of shim; 0.60 mm takes 0.10 mm of it away.
    private static Problem[] Notices(string built, string instrument = ", instrument: micrometer") =>
    [
        .. Books.SmallWith("jobs/2026/0001/job.yaml", j => j.Replace(
            "built: [0.08 mm], pack: [0.50 mm, 0.10 mm]",
            $"built: [{built}], pack: [0.50 mm, 0.10 mm], trial_pack: [0.50 mm], trial: [0.160 mm]{instrument}",
            StringComparison.Ordinal)).Problems.Where(p => p.Code == "pack-contradicts"),
    ];

    [Theory]
    [InlineData("0.060 mm")]
    [InlineData("0.065 mm")]
    [InlineData("0.055 mm")]
    public void A_value_within_the_uncertainty_agrees(string built) => Assert.Empty(Notices(built));

    [Theory]
    [InlineData("0.080 mm")]
    [InlineData("0.040 mm")]
    [InlineData("0.260 mm")]
    public void A_value_beyond_it_is_noted_with_what_it_should_be(string built)
    {
        var problem = Assert.Single(Notices(built));

        Assert.Equal(Severity.Notice, problem.Severity);
        Assert.Contains("should be 0.060 mm", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_an_instrument_nothing_is_known_and_nothing_said() => Assert.Empty(Notices("0.260 mm", string.Empty));

    [Fact]
    public void An_instrument_for_another_quantity_is_a_problem()
    {
        var problems = Books.SmallWith("shop.yaml", s => s.Replace("resolution: 0.01 mm, error_limit: 0.02 mm", "resolution: 0.1°, error_limit: 0.1°", StringComparison.Ordinal)).Problems;

        Assert.Contains(problems, p => p.Code == "wrong-quantity" && p.Place.File.EndsWith("job.yaml", StringComparison.Ordinal));
    }
}
