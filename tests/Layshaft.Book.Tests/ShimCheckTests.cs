using Layshaft.Book.Problems;

namespace Layshaft.Book.Tests;

/// <summary>What a shim pack could not be worked out for is told when the book is checked.</summary>
public class ShimCheckTests
{
    private const string Box = "gearboxes/four-speed.yaml";
    private const string Good = "kind: end float, target: 0.05 mm to 0.10 mm,";

    [Theory]
    [InlineData("kind: preload, target: 2 N·m to 3 N·m,", "shim-target")]
    [InlineData("kind: preload, target: 20 N to 30 N,", "shim-target")]
    [InlineData("kind: end float, target: at most 0.10 mm,", "shim-target")]
    [InlineData("kind: run-out, target: 0.01 mm to 0.02 mm,", "shim-target")]
    [InlineData("kind: backlash, target: 0.05 mm to 0.10 mm,", null)]
    [InlineData("kind: preload, target: 0.05 mm to 0.10 mm,", null)]
    [InlineData("kind: position, target: 45.05 mm to 45.10 mm,", null)]
    [InlineData("kind: end float, target: 2 thou to 4 thou,", null)]
    public void A_target_that_no_pack_can_be_picked_for_is_noted(string setting, string? code)
    {
        var problems = Books.SmallWith(Box, text => text.Replace(Good, setting, StringComparison.Ordinal)).Problems.Where(p => p.Place.File == Box).ToArray();

        Assert.Equal(code is null ? [] : [code], problems.Select(p => p.Code));
        Assert.All(problems, p => Assert.Equal(Severity.Notice, p.Severity));
        Assert.All(problems, p => Assert.NotEmpty(p.Remedy));
    }

    [Fact]
    public void A_thickness_in_inches_among_millimetres_is_noted()
    {
        var problems = Books.SmallWith(Box, text => text.Replace("{thickness: 0.20 mm, count: 4}", "{thickness: 0.20 in, count: 4}", StringComparison.Ordinal)).Problems;

        var note = Assert.Single(problems);
        Assert.Equal(("mixed-shims", Severity.Notice), (note.Code, note.Severity));
        Assert.Contains("0.2 in", note.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[0.50 mm, 0.10 in]", "Did you mean 0.1 mm?")]
    [InlineData("[0.50 mm, 1.0 mm]", "Did you mean 0.1 mm?")]
    [InlineData("[0.50 mm, 0.17 mm]", "Check the value and its unit, or add the thickness to the gearbox file, with count: 0 if there are none left.")]
    public void A_shim_that_the_stock_does_not_list_is_noted(string pack, string remedy)
    {
        var problems = Books.SmallWith("jobs/2026/0001/job.yaml", text => text.Replace("[0.50 mm, 0.10 mm]", pack, StringComparison.Ordinal)).Problems;

        Assert.Contains(problems, p => p.Code == "shim-not-in-stock" && p.Severity == Severity.Notice && p.Remedy == remedy);
    }

    [Theory]
    [InlineData("demo-data")]
    [InlineData("src/Layshaft.Cli/StarterBook")]
    public void Our_own_books_have_no_doubtful_shim(string book)
    {
        string[] doubtful = ["shim-target", "mixed-shims", "shim-not-in-stock", "too-many-shims"];

        Assert.DoesNotContain(Reading.BookReader.ReadFolder(OwnBooks.Folder(book)).Problems, p => doubtful.Contains(p.Code));
    }
}
