using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Tests.Hostile;

/// <summary>Markup, script and style planted in every text field and every note of the demo book arise nowhere on its pages.</summary>
public sealed partial class InjectionTests
{
    private const string Mark = "PLANTED";

    private static readonly string[] s_addresses = ["href", "src", "srcset", "action", "formaction", "xlink:href", "data", "poster", "ping", "background", "cite", "longdesc"];

    private static readonly Lazy<(PlantedBook Book, IReadOnlyDictionary<string, string> Site)> s_site = new(Publish);

    [Fact]
    public void Every_text_field_of_the_shapes_was_planted_or_refused()
    {
        Assert.True(PlantedBook.TextFields.Count > 60, $"{PlantedBook.TextFields.Count} text fields");
        // A past event has the shape of the next one; in the demo only that one has corners of its own.
        Assert.Equal(PlantedBook.TextFields.Where(f => f != "job.last_event.corners[].corner").Order(StringComparer.Ordinal), s_site.Value.Book.Planted.Concat(s_site.Value.Book.Refused).Order(StringComparer.Ordinal));
        Assert.Equal(["shop.email"], s_site.Value.Book.Refused); // only an address is taken there
    }

    [Fact]
    public void No_page_has_an_element_an_attribute_or_an_address_that_a_field_brought_in()
    {
        var pages = s_site.Value.Site.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal)).ToList();
        Assert.True(pages.Count > 25, $"{pages.Count} pages");
        var shown = 0;
        foreach (var (path, html) in pages)
        {
            var page = new HtmlParser().ParseDocument(html);
            shown += page.DocumentElement.TextContent.Split(Mark).Length - 1;
            Assert.All(page.QuerySelectorAll("style"), s => Assert.Same(page.Head, s.ParentElement));
            Assert.True(page.QuerySelectorAll("style").Length <= 1, $"{path}: more than its own style");
            foreach (var element in page.All)
            {
                Assert.False(element.LocalName is "script" or "iframe" or "object" or "embed" or "base" or "form" or "marquee" or "foreignobject" or "foreignObject", $"{path}: <{element.LocalName}>");
                foreach (var attribute in element.Attributes)
                {
                    Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), $"{path}: {attribute.Name}");
                    Assert.False(attribute.Name.Equals("style", StringComparison.OrdinalIgnoreCase), $"{path}: style");
                    Assert.False(attribute.Name.Contains(Mark, StringComparison.OrdinalIgnoreCase), $"{path}: {attribute.Name}");
                    if (s_addresses.Contains(attribute.Name))
                    {
                        Assert.True(IsHarmless(attribute.Value, element), $"{path}: {attribute.Name}={attribute.Value}");
                    }
                }
            }
        }

        // Were nothing shown, nothing would be proved.
        Assert.True(shown > 2000, $"{shown} marks were shown");
    }

    [Fact]
    public void What_stands_in_a_style_is_within_a_string()
    {
        var sheets = s_site.Value.Site.Where(f => f.Key.EndsWith(".html", StringComparison.Ordinal))
            .Select(f => KeyValuePair.Create(f.Key, new HtmlParser().ParseDocument(f.Value).QuerySelector("style")?.TextContent ?? string.Empty)).ToList();
        Assert.Contains(sheets, s => s.Value.Contains(Mark, StringComparison.Ordinal));
        foreach (var (path, css) in sheets)
        {
            Assert.False(CssString().Replace(css, string.Empty).Contains(Mark, StringComparison.Ordinal), path);
        }
    }

    [Fact]
    public void A_planted_site_has_the_same_elements_as_one_with_plain_words()
    {
        var plain = Publish(PlantedBook.Make(n => $"{Mark} {n} plain words").Review);
        foreach (var (path, html) in s_site.Value.Site.Where(f => f.Key.StartsWith("shop/", StringComparison.Ordinal) && f.Key.EndsWith(".html", StringComparison.Ordinal)))
        {
            Assert.Equal(Elements(plain[path]), Elements(html));
        }
    }

    private static IEnumerable<string> Elements(string html) => new HtmlParser().ParseDocument(html).All.Where(e => e.LocalName is not ("br" or "tspan" or "text" or "wbr")).Select(e => e.LocalName);

    // A page leads to pages and files of its site, to mail and telephone; the picture of an empty icon is the only other.
    private static bool IsHarmless(string address, IElement element)
    {
        var plain = new string([.. address.Where(c => !char.IsControl(c) && !char.IsWhiteSpace(c))]).ToLowerInvariant();
        return plain.StartsWith("mailto:", StringComparison.Ordinal) || plain.StartsWith("tel:", StringComparison.Ordinal)
            || (plain == "data:," && element.LocalName == "link")
            || (!plain.StartsWith("//", StringComparison.Ordinal) && !plain.StartsWith('\\') && !Scheme().IsMatch(plain));
    }

    // Between quotes and brackets, as an attribute, as a style, as a script, as Markdown, as a stylesheet, as a template.
    private static string Payload(int number) =>
        $"{Mark}{number} </title></style></svg><script>alert({number})</script><img src=x onerror=alert({number})>\" onmouseover=\"alert({number})\" style=\"x:y\" ' onfocus='alert(1) "
        + $"[a](javascript:alert({number})) <javascript:alert({number})> {{{{ page.head }}}} {{count}} \\\" }} */ @import url(//x.example); {Mark} ]]> --> &lt;b&gt; &#60;script&#62;";

    private static (PlantedBook Book, IReadOnlyDictionary<string, string> Site) Publish()
    {
        var (book, review) = PlantedBook.Make(Payload);
        return (book, Publish(review));
    }

    private static Dictionary<string, string> Publish(Assessment.BookReview review)
    {
        var notes = review.Files.All.Where(f => f.Path.EndsWith(".md", StringComparison.Ordinal)).ToDictionary(f => f.Path, f => System.Text.Encoding.UTF8.GetString(review.Files.Read(f.Path)), StringComparer.Ordinal);
        var composition = DemoBook.Composition(review) with
        {
            Notes = notes,
            Pictures = new PictureIndex(review.Assessment!.Book.Jobs.SelectMany(j => j.Photos.Select(p => $"{j.Folder}/photos/{p.File}")).Distinct().ToDictionary(p => p, p => new UsablePicture(p, (1600, 1200), (400, 300)))),
        };
        var folders = TemplateFolders.BesideProgram();
        var builder = new SiteBuilder(composition, new TemplateEngine(TemplateSet.Load(folders), composition.Texts), review.Files, folders, "test");
        return builder.Files().Where(f => Path.GetExtension(f.Path) is ".html" or ".css").ToDictionary(
            f => f.Path,
            f =>
            {
                var made = f.Make();
                Assert.Empty(made.Problems);
                return System.Text.Encoding.UTF8.GetString(made.Bytes!.Value.Span);
            },
            StringComparer.Ordinal);
    }

    [GeneratedRegex("\"(?:[^\"\\\\\n]|\\\\.)*\"", RegexOptions.CultureInvariant, 5000)]
    private static partial Regex CssString();

    [GeneratedRegex("^[a-z][a-z0-9+.-]*:", RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Scheme();
}
