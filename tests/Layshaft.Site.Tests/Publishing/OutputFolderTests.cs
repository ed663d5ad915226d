using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Which folders may become a site.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    private PublishProblem? Problem(string folder) => OutputFolder.ProblemWith(_temp.At(folder), _temp.At("shop/book"));

    [Theory]
    [InlineData("shop/reports")]
    [InlineData("shop/book/reports")]
    [InlineData("shop/book2")]
    [InlineData("new/folder/")]
    public void A_folder_of_its_own_is_fine(string folder) => Assert.Null(Problem(folder));

    [Theory]
    [InlineData("shop/book")]
    [InlineData("shop/book/")]
    [InlineData("shop/../shop/book")]
    [InlineData("shop")]
    [InlineData("")]
    [InlineData("shop/.layshaft-reports")]
    [InlineData("shop/book/jobs")]
    [InlineData("shop/book/jobs/2026/site")]
    [InlineData("shop/book/customers/site")]
    [InlineData("shop/book/templates")]
    [InlineData("shop/book/units/")]
    public void The_book_what_holds_it_and_our_own_folders_are_refused(string folder) => Assert.NotNull(Problem(folder));

    [Fact]
    public void A_link_to_the_book_is_refused_whichever_side_it_is_on()
    {
        Directory.CreateDirectory(_temp.At("shop/book"));
        Directory.CreateSymbolicLink(_temp.At("link"), _temp.At("shop/book"));
        Directory.CreateSymbolicLink(_temp.At("up"), _temp.At("shop"));
        Assert.NotNull(Problem("link"));
        Assert.NotNull(Problem("up"));
        Assert.NotNull(OutputFolder.ProblemWith(_temp.At("shop"), _temp.At("link")));
        Assert.Null(Problem("up/reports"));
    }

    [Fact]
    public void A_file_is_refused()
    {
        _temp.Write("file", "x");
        Assert.Contains("file", Problem("file")!.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/etc")]
    [InlineData("/etc/site")]
    [InlineData("/usr/lib/site")]
    [InlineData("/home")]
    [InlineData("/tmp/")]
    [InlineData("/var")]
    public void Folders_of_the_system_are_refused(string folder)
    {
        if (!OperatingSystem.IsWindows())
        {
            Assert.NotNull(OutputFolder.ProblemWith(folder, null));
        }
    }

    [Fact]
    public void A_persons_own_folder_is_refused() =>
        Assert.NotNull(OutputFolder.ProblemWith(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), null));
}
