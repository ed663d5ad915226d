using System.Text;
using AngleSharp.Html.Parser;
using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Tests.Photos;
using Layshaft.Site.Tests.Seasons;
using SkiaSharp;

namespace Layshaft.Site.Tests.Pages;

public class LogoTests
{
    [Theory]
    [InlineData(300, 300, "", true)]
    [InlineData(600, 150, "Test Bench", false)]
    public void A_logo_stands_in_the_head_of_every_page_in_each_tree_beside_the_name_unless_it_is_one(int width, int height, string alt, bool named)
    {
        using var drawn = TestPicture.Quadrants(width, height);
        var (site, problems) = Prepare("mark.png", PlantedMetadata.InPng(TestPicture.Encode(drawn, SKEncodedImageFormat.Png)));

        Assert.Empty(problems);

        // The page of a folder that has nothing to show has no head.
        var pages = site.Keys.Where(p => p.EndsWith(".html", StringComparison.Ordinal) && Encoding.UTF8.GetString(site[p]).Contains("<header", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(pages);
        Assert.All(pages, path =>
        {
            var house = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(site[path])).QuerySelector(".house")!;
            var image = house.QuerySelector("img")!;
            Assert.Equal(alt, image.GetAttribute("alt"));
            Assert.Equal(named, house.TextContent.Contains("Test Bench", StringComparison.Ordinal));
            var target = Path.GetRelativePath("/", Path.GetFullPath(Path.Combine("/", Path.GetDirectoryName(path)!, image.GetAttribute("src")!))).Replace('\\', '/');
            Assert.True(site.ContainsKey(target), $"{path}: {target}");
            using var picture = SKBitmap.Decode(site[target]);
            Assert.Equal((image.GetAttribute("width"), image.GetAttribute("height")), ($"{picture.Width}", $"{picture.Height}"));
            Assert.DoesNotContain(PlantedMetadata.Word, Encoding.Latin1.GetString(site[target]), StringComparison.Ordinal);
        });
        Assert.Equal(["customers/look/logo.jpg", "reference/look/logo.jpg", "shop/look/logo.jpg"], site.Keys.Where(p => p.Contains("logo", StringComparison.Ordinal)).Order());
    }

    [Theory]
    [InlineData("mark.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>", "mark.svg is an SVG drawing")]
    [InlineData("mark.png", "not a picture", "mark.png is a text file")]
    [InlineData("mark.jpg", "", "mark.jpg is an empty file")]
    public void A_logo_that_cannot_be_read_is_a_problem_at_its_line_and_the_name_stands_for_it(string file, string content, string message)
    {
        var (site, problems) = Prepare(file, Encoding.UTF8.GetBytes(content));

        var problem = Assert.Single(problems);
        Assert.StartsWith(message, problem.Message, StringComparison.Ordinal);
        Assert.Equal("shop.yaml", problem.Place.File);
        Assert.Equal(Severity.LeftOut, problem.Severity);
        Assert.DoesNotContain(site.Keys, p => p.Contains("logo", StringComparison.Ordinal) || p.EndsWith(".svg", StringComparison.Ordinal));
        var page = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(site["shop/index.html"]));
        Assert.Equal("Test Bench", page.QuerySelector(".house")!.TextContent.Trim());
        Assert.Null(page.QuerySelector(".house img"));
    }

    [Fact]
    public void A_logo_that_ends_before_its_picture_does_is_a_problem()
    {
        using var drawn = TestPicture.Quadrants(400, 400);
        var whole = TestPicture.Encode(drawn);

        var (_, problems) = Prepare("mark.jpg", whole[..(whole.Length / 2)]);

        Assert.Contains("is incomplete", Assert.Single(problems).Message, StringComparison.Ordinal);
    }

    private static (IReadOnlyDictionary<string, byte[]> Site, IReadOnlyList<Problem> Problems) Prepare(string file, byte[] logo)
    {
        using var folder = new TempFolder();
        foreach (var (path, text) in SmallBook.Files(("shop.yaml", SmallBook.Shop + $"\nlogo: {file}\n")))
        {
            folder.Write(path, text);
        }

        folder.WriteBytes(file, logo);
        var plain = SmallBook.Review().Problems.Select(p => p.Code).ToHashSet();
        var site = SitePreparation.Of(BookReview.OfFolder(folder.Path), folder.Path);
        Assert.True(site.Builder is not null, string.Join('\n', site.Problems));
        var made = site.Builder.Files().ToDictionary(f => f.Path, f => f.Make().Bytes!.Value.ToArray());
        return (made, [.. site.Problems.Where(p => !plain.Contains(p.Code))]);
    }
}
