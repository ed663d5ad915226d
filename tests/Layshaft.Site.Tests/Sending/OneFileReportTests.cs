using System.Security.Cryptography;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Layshaft.Book.Values;
using Layshaft.Site.Sending;

namespace Layshaft.Site.Tests.Sending;

/// <summary>A page that stands alone, within a size.</summary>
public class OneFileReportTests
{
    private const string Page = "customers/key/0001/index.html";

    private const string Html = """
        <!doctype html>
        <html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'">
        <meta property="og:title" content="t"><meta property="og:image" content="https://x.example/card.png">
        <title>Report</title><link rel="stylesheet" href="../../look/site.css"><link rel="icon" href="data:,"></head>
        <body><nav><a href="../index.html">History</a></nav>
        <p><a href="#finding-1">one</a> <a href="../../../reference/terms.html#w">words</a> <a href="mailto:a@b.example">mail</a> <a href="https://out.example/">out</a></p>
        <figure><a class="picture" href="pictures/a-1600.jpg"><img src="pictures/a-480.jpg" srcset="pictures/a-480.jpg 480w, pictures/a-1600.jpg 1600w" sizes="94vw" width="1600" height="1200" loading="lazy" alt="A ring"></a></figure>
        <img src="pictures/b-480.jpg" alt="B">
        <svg viewBox="0 0 10 10"><a href="#finding-1"><path d="M0 0h1"/></a><a href="../0002/index.html"><path d="M0 0h1"/></a></svg>
        <script src="x.js"></script></body></html>
        """;

    private static readonly Dictionary<string, byte[]> Look = new()
    {
        ["customers/look/site.css"] = "@font-face { src: url(\"fonts/a.woff2\") format(\"woff2\"); }\r\nbody::after { content: \"</style><script>\"; background: url(data:,); }"u8.ToArray(),
        ["customers/look/fonts/a.woff2"] = [1, 2, 3],
    };

    private static ReadOnlyMemory<byte>? Read(string path) => Look.TryGetValue(path, out var bytes) ? (ReadOnlyMemory<byte>?)bytes : null;

    private static Dictionary<string, IReadOnlyList<ReadOnlyMemory<byte>>> Pictures(params int[] sizes)
    {
        IReadOnlyList<ReadOnlyMemory<byte>> Of(byte fill) => [.. sizes.Select(s => (ReadOnlyMemory<byte>)Enumerable.Repeat(fill, s).ToArray())];
        return new() { ["customers/key/0001/pictures/a-480.jpg"] = Of(1), ["customers/key/0001/pictures/b-480.jpg"] = Of(2) };
    }

    private static OneFileReport Make(long limit, WebAddress? site = null, params int[] sizes) =>
        OneFileReport.Make(Page, Html, Read, Pictures(sizes.Length > 0 ? sizes : [3000]), site, new FileSize(limit));

    private static IDocument Parse(OneFileReport report) => new HtmlParser().ParseDocument(Encoding.UTF8.GetString(report.Content!.Value.Span));

    [Fact]
    public void Everything_is_inside_and_nothing_is_asked_for()
    {
        var report = Make(1_000_000);
        var document = Parse(report);

        Assert.Empty(report.Missing);
        Assert.Equal(0, report.Reduced);
        Assert.Equal(report.Content!.Value.Length, report.Size.Bytes);
        Assert.Empty(document.QuerySelectorAll("link[rel=stylesheet], script, [srcset], meta[property='og:image']"));
        Assert.All(document.QuerySelectorAll("img"), i => Assert.StartsWith("data:image/jpeg;base64,", i.GetAttribute("src"), StringComparison.Ordinal));
        Assert.Equal(2, document.QuerySelectorAll("img").Length);
        Assert.Equal(Convert.ToBase64String(Pictures(3000)["customers/key/0001/pictures/b-480.jpg"][0].Span), document.QuerySelectorAll("img")[1].GetAttribute("src")!.Split(',')[1]);
        var style = Assert.Single(document.QuerySelectorAll("style")).TextContent;
        Assert.Contains("url(\"data:font/woff2;base64,AQID\")", style, StringComparison.Ordinal);
        Assert.DoesNotContain("fonts/", style, StringComparison.Ordinal);
    }

    [Fact]
    public void A_style_that_stands_in_the_page_stands_alone_too()
    {
        var html = Html.Replace("<link rel=\"stylesheet\" href=\"../../look/site.css\">", "<style>@font-face{src:url(\"../../look/fonts/a.woff2\")}</style>", StringComparison.Ordinal);
        var report = OneFileReport.Make(Page, html, Read, Pictures(3000), null, new FileSize(1_000_000));
        var document = Parse(report);
        var style = Assert.Single(document.QuerySelectorAll("style")).TextContent;

        Assert.Empty(report.Missing);
        Assert.Equal("@font-face{src:url(\"data:font/woff2;base64,AQID\")}", style);
        Assert.Contains($"style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}';", document.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content"), StringComparison.Ordinal);
    }

    [Fact]
    public void Its_policy_allows_just_its_own_stylesheet()
    {
        var document = Parse(Make(1_000_000));
        var policy = document.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content")!;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(document.QuerySelector("style")!.TextContent)));

        Assert.Equal($"default-src 'none'; img-src data:; style-src 'sha256-{hash}'; font-src data:; base-uri 'none'; form-action 'none'", policy);
        Assert.Empty(document.QuerySelectorAll("[style]"));
    }

    [Fact]
    public void Links_to_other_pages_are_dropped_when_nobody_knows_where_the_site_is()
    {
        var document = Parse(Make(1_000_000));

        Assert.Equal(["#finding-1", "mailto:a@b.example", "https://out.example/", "#finding-1"], document.QuerySelectorAll("a[href]").Select(a => a.GetAttribute("href")!));
        Assert.Empty(document.QuerySelectorAll("nav"));
        Assert.Contains("words", document.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Links_to_other_pages_are_whole_when_the_shop_names_its_site()
    {
        var document = Parse(Make(1_000_000, new WebAddress("https://r.example/boxes/")));

        Assert.Equal(
            [
                "https://r.example/boxes/customers/key/index.html", "#finding-1", "https://r.example/boxes/reference/terms.html#w", "mailto:a@b.example", "https://out.example/",
                "#finding-1", "https://r.example/boxes/customers/key/0002/index.html",
            ],
            document.QuerySelectorAll("a[href]").Select(a => a.GetAttribute("href")!));
    }

    [Theory]
    [InlineData(1_000_000, 0)]
    [InlineData(100_000, 1)]
    [InlineData(30_000, 2)]
    [InlineData(6_000, 3)]
    public void Pictures_are_reduced_only_until_it_fits(long limit, int steps)
    {
        var report = Make(limit, null, 90_000, 30_000, 9_000, 1_000);

        Assert.Equal(steps, report.Reduced);
        Assert.InRange(report.Content!.Value.Length, 1, limit);
        Assert.Equal(report.Content.Value.Length, report.Size.Bytes);

        // One step less would not have fitted.
        int[] sizes = [90_000, 30_000, 9_000, 1_000];
        Assert.True(steps == 0 || Make(1_000_000, null, sizes[steps - 1]).Size.Bytes > limit);
    }

    [Fact]
    public void What_cannot_be_made_small_enough_says_how_large_it_is_at_least()
    {
        var least = Make(1_000_000, null, 1_000).Size;

        var report = Make(least.Bytes - 1, null, 90_000, 1_000);

        Assert.Null(report.Content);
        Assert.Equal(least, report.Size);
        Assert.NotNull(Make(least.Bytes, null, 90_000, 1_000).Content);
    }

    [Fact]
    public void The_least_size_is_found_even_where_a_smaller_picture_weighs_more()
    {
        var least = Make(1_000_000, null, 900).Size;

        var report = Make(1, null, 5_000, 900, 1_200);

        Assert.Null(report.Content);
        Assert.Equal(least, report.Size);
    }

    [Fact]
    public void What_cannot_be_put_inside_is_told_and_left_out()
    {
        var html = Html.Replace("site.css", "gone.css", StringComparison.Ordinal).Replace("pictures/b-480.jpg", "../../../../../etc/b.jpg", StringComparison.Ordinal);

        var report = OneFileReport.Make(Page, html, Read, Pictures(10), null, new FileSize(1_000_000));

        Assert.Equal(["customers/look/gone.css", "../../../../../etc/b.jpg"], report.Missing.OrderByDescending(m => m, StringComparer.Ordinal));
        Assert.Single(Parse(report).QuerySelectorAll("img"));
    }

    [Theory]
    [InlineData("../look/a.css", "customers/key/look/a.css")]
    [InlineData("a%20b.css?x#y", "customers/key/0001/a b.css")]
    [InlineData("../", "customers/key/index.html")]
    [InlineData("#x", "customers/key/0001/index.html")]
    [InlineData("../../../../x", null)]
    [InlineData("/x", null)]
    [InlineData("//x.example/y", null)]
    [InlineData("https://x.example/y", null)]
    [InlineData("mailto:a@b.example", null)]
    public void A_relative_address_is_found_within_the_site(string address, string? path) => Assert.Equal(path, SitePaths.Resolve(Page, address));
}
