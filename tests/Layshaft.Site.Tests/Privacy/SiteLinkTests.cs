using System.Text;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Sending;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>A published tree works wherever it is put: everything that a page names lies beside it.</summary>
[Collection(OnePlantedSite.Name)]
public sealed partial class SiteLinkTests(PlantedSite site)
{
    private static readonly string[] Names = ["href", "src", "srcset", "xlink:href", "action", "poster", "data"];

    [Fact]
    public void Every_link_and_every_asset_of_every_page_is_a_file_of_the_site()
    {
        var wrong = new List<string>();
        var followed = 0;
        foreach (var (page, bytes) in site.Files.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal)))
        {
            var document = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(bytes));
            foreach (var address in document.All.SelectMany(AddressesOf))
            {
                followed++;
                Check(page, address, wrong);
            }
        }

        foreach (var (sheet, bytes) in site.Files.Where(f => f.Key.EndsWith(".css", StringComparison.Ordinal)))
        {
            foreach (Match match in Loaded().Matches(Encoding.UTF8.GetString(bytes)))
            {
                followed++;
                Check(sheet, match.Groups[1].Value, wrong);
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(followed > 300, $"Only {followed} addresses were followed.");
    }

    // The shop's pages link to customers' pages and to public ones; what is uploaded must not need the shop's folder.
    [Fact]
    public void No_page_for_upload_needs_the_shops_folder()
    {
        foreach (var (page, bytes) in site.Files.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal) && !f.Key.StartsWith("shop/", StringComparison.Ordinal)))
        {
            var document = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(bytes));
            Assert.All(document.All.SelectMany(AddressesOf), a => Assert.False(SitePaths.Resolve(page, a)?.StartsWith("shop/", StringComparison.Ordinal) ?? false, $"{page}: {a}"));
        }
    }

    [Fact]
    public void Every_page_asks_for_no_referrer_and_customers_and_shop_pages_not_to_be_listed()
    {
        foreach (var (page, bytes) in site.Files.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal)))
        {
            var document = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(bytes));
            Assert.Equal("no-referrer", document.QuerySelector("meta[name=referrer]")?.GetAttribute("content"));
            Assert.Contains("default-src 'none'", document.QuerySelector("meta[http-equiv='Content-Security-Policy']")?.GetAttribute("content"), StringComparison.Ordinal);
            Assert.Equal(!page.StartsWith("reference/", StringComparison.Ordinal) || page.StartsWith("reference/look/", StringComparison.Ordinal), document.QuerySelector("meta[name=robots]")?.GetAttribute("content")?.Contains("noindex", StringComparison.Ordinal) ?? false);
            Assert.Empty(document.QuerySelectorAll("[style], script:not([src]), [onclick], [onload]"));
        }
    }

    // Some hosts list a folder that has no page of its own.
    [Fact]
    public void Every_folder_for_upload_has_a_page_of_its_own()
    {
        var folders = site.Files.Keys.Where(f => !f.StartsWith("shop/", StringComparison.Ordinal)).SelectMany(OutputPath.FoldersAbove).Distinct().ToArray();
        Assert.Contains("customers", folders);
        Assert.Contains("customers/look", folders);
        Assert.All(folders, f => Assert.True(site.Files.ContainsKey($"{f}/index.html"), f));
        Assert.Equal("This page is intentionally empty.", new HtmlParser().ParseDocument(Encoding.UTF8.GetString(site.Files["customers/index.html"])).Body!.TextContent.Trim());
    }

    [Fact]
    public void Every_folder_of_the_demo_for_upload_has_a_page_of_its_own()
    {
        using var home = new TempFolder();
        var demo = SitePreparation.Of(BookReview.OfFolder(Path.Combine(AppContext.BaseDirectory, "demo-data")), home.Path);
        var files = demo.Builder!.Files().Select(f => f.Path).Where(f => !f.StartsWith("shop/", StringComparison.Ordinal)).ToHashSet();
        Assert.Contains(files, f => f.EndsWith("-1600.jpg", StringComparison.Ordinal));
        Assert.All(files.SelectMany(OutputPath.FoldersAbove).Distinct(), f => Assert.True(files.Contains($"{f}/index.html"), f));
    }

    private void Check(string from, string address, List<string> wrong)
    {
        if (address.Length == 0 || address.StartsWith("data:", StringComparison.Ordinal) || address.StartsWith("mailto:", StringComparison.Ordinal) || address.StartsWith("tel:", StringComparison.Ordinal))
        {
            return;
        }

        if (SitePaths.Resolve(from, address) is not { } target || !site.Files.TryGetValue(target, out var bytes))
        {
            wrong.Add($"{from}: {address}");
        }
        else if (address.IndexOf('#', StringComparison.Ordinal) is var at and >= 0 && at < address.Length - 1 && target.EndsWith(".html", StringComparison.Ordinal)
            && !Encoding.UTF8.GetString(bytes).Contains($"id=\"{address[(at + 1)..]}\"", StringComparison.Ordinal))
        {
            wrong.Add($"{from}: nothing is called {address}");
        }
    }

    private static IEnumerable<string> AddressesOf(IElement element)
    {
        foreach (var name in Names)
        {
            if (element.GetAttribute(name) is { } value)
            {
                foreach (var address in name == "srcset" ? value.Split(',').Select(c => c.Trim().Split(' ')[0]) : [value])
                {
                    yield return address;
                }
            }
        }
    }

    [GeneratedRegex("url\\(\\s*[\"']?([^\"')]+)[\"']?\\s*\\)")]
    private static partial Regex Loaded();
}
