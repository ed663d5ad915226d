namespace Layshaft.Book.Tests;

/// <summary>Checks that Engineering makes: meshes, spans, packs.</summary>
public class MeshCheckTests
{
    private const string Box = "gearboxes/four-speed.yaml";

    private static string[] Codes(Func<string, string> change) => [.. Books.SmallWith(Box, change).Problems.Select(p => p.Code)];

    private static string WithSpan(string box, string measure) => box.Replace(
        "shims:\n",
        $"  - id: lay-2\n    name: Second gear on the layshaft\n    kind: gear\n    gear: 2\n    shaft: lay\n    measures:\n      - {measure}\nshims:\n",
        StringComparison.Ordinal);

    [Theory]
    [InlineData("25/28", "25/29", false)]
    [InlineData("25/28", "25/27", false)]
    [InlineData("25/28", "25/33", true)]
    [InlineData("25/28", "24/24", true)]
    [InlineData("25/28", "60/60", true)]
    public void A_pair_must_run_at_the_centre_distance_with_a_profile_shift_that_can_be_cut(string from, string to, bool refused) =>
        Assert.Equal(refused, Codes(b => b.Replace(from, to, StringComparison.Ordinal)).Contains("does-not-mesh"));

    [Fact]
    public void A_pair_that_does_not_mesh_is_told_why_and_which_sums_do()
    {
        var problem = Assert.Single(Books.SmallWith(Box, b => b.Replace("25/28", "25/38", StringComparison.Ordinal)).Problems, p => p.Code == "does-not-mesh");

        Assert.Contains("25/38", problem.Message, StringComparison.Ordinal);
        Assert.Contains("52 to ", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Box, "[41/11]", "[41/11, 11/35]")]
    [InlineData("units/0001.yaml", "final_drive: 41/11", "final_drive: 11/35")]
    public void A_crown_wheel_smaller_than_its_pinion_is_asked_about(string file, string from, string to)
    {
        var problem = Assert.Single(Books.SmallWith(file, t => t.Replace(from, to, StringComparison.Ordinal)).Problems);

        Assert.Equal(("bad-teeth", "'11/35' is a crown wheel smaller than its pinion."), (problem.Code, problem.Message));
        Assert.Equal("Did you mean 35/11? Write crown wheel/pinion (driven/driver).", problem.Remedy);
        Assert.Equal(file, problem.Place.File);
        Assert.True(problem.Place.Column > 1);
    }

    [Fact]
    public void A_pressure_angle_that_no_gear_has_is_a_problem() =>
        Assert.Contains("unlikely-angle", Codes(b => b.Replace("centre_distance: 66.25 mm", "centre_distance: 66.25 mm, pressure_angle: 45°", StringComparison.Ordinal)));

    // 19 teeth of module 3: about three teeth are spanned; a span over two is one base pitch, 8.856 mm, shorter.
    [Theory]
    [InlineData("{id: span, name: Span, new: 23.000 mm, limit: 22.900 mm, span: 3}", false)]
    [InlineData("{id: span, name: Span, new: 23.000 mm, limit: 22.900 mm, span: 2}", true)]
    [InlineData("{id: span, name: Span, new: 58.500 mm, limit: 58.400 mm, span: 7}", true)]
    [InlineData("{id: span, name: Span, new: 23.000 mm, limit: 22.900 mm, span: 19}", true)]
    public void A_span_must_fit_the_gear(string measure, bool refused) =>
        Assert.Equal(refused, Codes(b => WithSpan(b, measure)).Contains("cannot-span"));
}
