using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Which paths a site may have.</summary>
public sealed class OutputPathTests
{
    [Theory]
    [InlineData("index.html")]
    [InlineData("c/abcdefghijklmnopqrstuvwxyz/2026-03-job_2.html")]
    [InlineData("console/con1.html")]
    public void Plain_paths_are_fine(string path) => Assert.Null(OutputPath.ProblemWith(path));

    [Theory]
    [InlineData("")]
    [InlineData("/a")]
    [InlineData("a/")]
    [InlineData("a//b")]
    [InlineData("../a")]
    [InlineData("a/../b")]
    [InlineData("./a")]
    [InlineData(".hidden")]
    [InlineData("a/b.")]
    [InlineData("a\\b")]
    [InlineData("C:a")]
    [InlineData("a b")]
    [InlineData("a%2fb")]
    [InlineData("\u00E9.html")]
    [InlineData("e\u0301.html")]
    [InlineData("a\0b")]
    [InlineData("con")]
    [InlineData("a/NUL.html")]
    [InlineData("Com1.tar.gz")]
    [InlineData("lpt9")]
    public void Paths_that_some_system_reads_otherwise_are_refused(string path)
    {
        Assert.NotNull(OutputPath.ProblemWith(path));
        Assert.NotEmpty(Sites.Plan((path, "x")).Problems);
    }

    [Fact]
    public void A_path_too_long_is_refused() => Assert.NotNull(OutputPath.ProblemWith(new string('a', OutputPath.Longest + 1)));

    [Theory]
    [InlineData("a.html", "A.html")]
    [InlineData("a.html", "a.html")]
    [InlineData("a", "a/b")]
    [InlineData("A", "a/b")]
    [InlineData("x/a", "X/b")]
    [InlineData("p/x/a", "p/X/b")]
    public void Paths_that_meet_on_some_system_are_refused(string one, string other) =>
        Assert.NotEmpty(Sites.Plan((one, "1"), (other, "2")).Problems);

    [Fact]
    public void Paths_that_only_look_alike_are_fine() => Assert.Empty(Sites.Plan(("a/b", "1"), ("a-b", "2"), ("a/bb", "3"), ("ab", "4")).Problems);
}
