using System.Runtime.CompilerServices;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Pages;

/// <summary>
/// Whole pages of the small book, compared byte for byte with the approved ones that are kept beside the tests. Run the tests
/// with LAYSHAFT_APPROVE=1 to keep the new pages, then read what changed before committing it.
/// </summary>
public class ApprovedPageTests
{
    private const int Shown = 160;

    private static readonly Lazy<IReadOnlyDictionary<string, string>> Site = new(() => SmallBook.Publish());

    [Theory]
    [InlineData("report", "customers/key-a-1/0003/index.html")]
    [InlineData("report-earlier-owner", "customers/key-a-1/0002/index.html")]
    [InlineData("estimate", "customers/key-b-0/0004/index.html")]
    [InlineData("history", "customers/key-a-1/index.html")]
    [MemberData(nameof(ShopPages))]
    [InlineData("reference-index", "reference/index.html")]
    [InlineData("reference", "reference/gearbox-four.html")]
    public void A_whole_page_is_the_approved_one(string name, string path) => Compare(name, path, Site.Value);

    public static TheoryData<string, string> ShopPages()
    {
        var pages = new TheoryData<string, string>();
        foreach (var page in ShopPageList.All)
        {
            pages.Add(page.Name, page.Path);
        }

        return pages;
    }

    private static void Compare(string name, string path, IReadOnlyDictionary<string, string> site)
    {
        var file = Path.Combine(Folder(), name + ".html");
        var page = site[path];
        if (Environment.GetEnvironmentVariable("LAYSHAFT_APPROVE") == "1")
        {
            File.WriteAllText(file, page);
        }

        Assert.True(File.Exists(file), $"There is no approved page {file}. Run the tests with LAYSHAFT_APPROVE=1 to keep it.");
        var difference = FirstDifference(File.ReadAllText(file).ReplaceLineEndings("\n"), page);
        Assert.True(difference is null, $"{path} is not the approved {name}.html any more. {difference}");
    }

    [Fact]
    public void A_report_with_worn_dogs_is_the_approved_one() => Compare("report-driving", DrivingBook.Report, SmallBook.Publish(DrivingBook.Files()));

    [Fact]
    public void The_first_difference_is_told_by_line_and_column()
    {
        Assert.Null(FirstDifference("a\nb", "a\nb"));
        Assert.Equal("Line 2, column 2:\napproved: bc\nnow:      bd", FirstDifference("a\nbc", "a\nbd"));
        Assert.Equal("Line 2, column 1:\napproved: (ends)\nnow:      b", FirstDifference("a", "a\nb"));
    }

    private static string? FirstDifference(string approved, string now)
    {
        if (approved == now)
        {
            return null;
        }

        var (before, after) = (approved.Split('\n'), now.Split('\n'));
        var line = before.Zip(after).TakeWhile(p => p.First == p.Second).Count();
        var (was, isNow) = (before.ElementAtOrDefault(line), after.ElementAtOrDefault(line));
        var column = (was ?? string.Empty).Zip(isNow ?? string.Empty).TakeWhile(p => p.First == p.Second).Count();
        return FormattableString.Invariant($"Line {line + 1}, column {column + 1}:\napproved: {Around(was, column)}\nnow:      {Around(isNow, column)}");
    }

    private static string Around(string? line, int column)
    {
        if (line is null)
        {
            return "(ends)";
        }

        var start = Math.Max(0, Math.Min(column - (Shown / 2), line.Length - Shown));
        return line.Substring(start, Math.Min(Shown, line.Length - start));
    }

    private static string Folder([CallerFilePath] string testFile = "") => Path.Combine(Path.GetDirectoryName(testFile)!, "Approved");
}
