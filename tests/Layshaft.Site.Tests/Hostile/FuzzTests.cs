using AngleSharp.Html.Parser;
using CsCheck;
using Layshaft.Book.Tests.Hostile;
using Layshaft.Site.Notes;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.History;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Photos;
using Layshaft.Site.Templates;
using Layshaft.Site.Tests.Photos;
using Layshaft.Site.Tests.Seasons;
using Layshaft.Site.Wording;
using SkiaSharp;

namespace Layshaft.Site.Tests.Hostile;

/// <summary>Made-up notes, pictures, templates and books end in a page or a problem, and in nothing else.</summary>
public sealed class FuzzTests
{
    private static readonly Texts s_words = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;

    private sealed record Row(string Name, string? Note);

    private sealed record Page(string Title, IReadOnlyList<Row> Rows, int Count);

    [Fact]
    public void A_note_never_becomes_a_script_a_handler_or_a_style() => Fuzz.Sample(
        "Markdown notes",
        Gen.OneOf(
            Fuzz.Soup,
            Fuzz.Spoilt(
                "# Notes\n\nThe **second** gear, see [the page](../a.html) and <https://a.example>.\n\n| a | b |\n|---|--:|\n| 1 | 2 |\n\n- x\n  - y\n\n> z\n",
                "[a](javascript:alert(1)) ![b](x.png \"t\") <b onclick=\"x\">c</b> `d` ~~e~~\n\n[r]: data:text/html,x \"y\"\n\n[r] &lt; &#60; &colon;\n",
                "1. a\n2. b\n\n```\n<script>\n```\n\n***\n\n<div style=\"x\">\n")),
        note =>
        {
            var html = NoteRenderer.Render(note, 2).Html.Markup;
            var page = new HtmlParser().ParseDocument("<body>" + html);
            foreach (var element in page.Body!.QuerySelectorAll("*"))
            {
                Assert.DoesNotContain(element.LocalName, (string[])["script", "style", "iframe", "object", "embed", "img", "svg", "form", "input", "base", "link", "meta"]);
                Assert.DoesNotContain(element.Attributes, a => a.Name.StartsWith("on", StringComparison.Ordinal) || a.Name is "style" or "id" or "src");
                var address = new string([.. (element.GetAttribute("href") ?? string.Empty).Where(c => c > ' ')]).ToLowerInvariant();
                Assert.False(address.StartsWith("javascript:", StringComparison.Ordinal) || address.StartsWith("data:", StringComparison.Ordinal) || address.StartsWith("vbscript:", StringComparison.Ordinal), address);
            }
        },
        1500);

    [Theory]
    [InlineData("![a ![b](c.png \"t\") d](e.png \"t\")\n")]
    [InlineData("[a](javascript:alert(1)) ![javascript:alert(1)) ![b](1e9x.png \"t\") <b onclick=\"xb](x.png \"t\") <b onclick=\"x\">c</b> `d` ~~e~~g \"t\") <b onclick=\"x\">c</b> `d` ~~e~~\n\n[r]: data:text/html,x \"y\"\n\n[r] &lt; &#60; &colon;\n")]
    [InlineData("![a [b](javascript:alert(1)) c](e.png)\n")]
    public void A_picture_or_a_link_within_a_picture_is_not_missed(string note)
    {
        var html = NoteRenderer.Render(note, 2).Html.Markup;
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.DoesNotContain("href=\"javascript", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shim_thicker_than_any_pack_is_a_problem_and_no_crash()
    {
        var job = SmallBook.Files()["jobs/2023/0001/job.yaml"].Replace("0.20 mm]", "99 mm]", StringComparison.Ordinal);
        Assert.Contains(SmallBook.Review(("jobs/2023/0001/job.yaml", job)).Problems, p => p.Code == "unlikely-shim");
    }

    [Fact]
    public void A_pictures_header_gives_its_facts_or_a_reason()
    {
        using var bitmap = TestPicture.Quadrants(60, 40);
        (string Name, byte[] Bytes)[] pictures =
        [
            ("a.jpg", PlantedMetadata.InJpeg(TestPicture.Encode(bitmap))), ("a.png", TestPicture.Encode(bitmap, SKEncodedImageFormat.Png)),
            ("a.webp", TestPicture.Encode(bitmap, SKEncodedImageFormat.Webp)), ("a.heic", RenditionPixels.Asset("turn-6.heic")), ("a.avif", RenditionPixels.Asset("turn-6.avif")),
        ];
        Fuzz.Sample(
            "image headers",
            Gen.Select(Gen.Int[0, pictures.Length - 1], Gen.Select(Gen.Int[0, 1200], Gen.Byte).Array[0, 8], Gen.Int[0, 4000], Gen.Byte.Array[0, 40]),
            input =>
            {
                var (which, changes, length, tail) = input;
                var bytes = pictures[which].Bytes.ToArray();
                foreach (var (at, value) in changes)
                {
                    bytes[at % bytes.Length] = value;
                }

                byte[] cut = [.. bytes[..Math.Min(bytes.Length, Math.Max(0, length))], .. tail];
                var (facts, problem) = PhotoFile.Inspect(new MemoryStream(length > 2000 ? bytes : cut), pictures[which].Name);
                Assert.True(facts is not null || problem is not null);
                if (facts is not null)
                {
                    Assert.All(PhotoRenditions.SizesOf(facts), s => Assert.True(s is { Width: > 0, Height: > 0 }));
                }
            },
            1000);
    }

    [Fact]
    public void A_template_renders_escaped_within_its_time_or_is_a_problem()
    {
        var page = new Page("<script>PLANTED</script>", [new("<b>x</b>", null), new("y", "<i>z</i>")], 3);
        Fuzz.Sample(
            "templates",
            Gen.OneOf(
                Fuzz.Soup.Select(s => "{{ " + s + " }}"),
                Fuzz.Spoilt(
                    "<h1>{{ page.title }}</h1>{{ for r in page.rows }}<p>{{ r.name }}{{ if r.note }}{{ r.note }}{{ end }}</p>{{ end }}",
                    "{{ x = page.rows[0] }}{{ x.name | say }}{{ include \"b.html\" page }}{{ case page.count; when 1; page.title; else; end }}",
                    "{{ for i in 1..1000000000 }}{{ i }}{{ end }}{{ while true }}x{{ end }}{{ include \"a.html\" page }}",
                    "{{ func f(a); ret f(a); end; f 1 }}{{ capture c }}{{ page.title }}{{ end }}{{ c }}{{ tablerow r in page.rows }}x{{ end }}",
                    "{{ page.title = \"x\"; page.rows[0].name = 1 }}{{ import page }}{{ with page }}{{ title }}{{ end }}{{ readonly x }}{{ this }}{{ $0 }}")),
            text =>
            {
                var set = TemplateSet.Parse(new Dictionary<string, string> { ["a.html"] = text, ["b.html"] = "<b>{{ $0.title }}</b>" });
                var rendered = new TemplateEngine(set, s_words, TimeSpan.FromSeconds(5)).Render("a.html", page);
                Assert.Equal(rendered.Html is null, rendered.Problems.Count > 0);
                Assert.DoesNotContain("<script>PLANTED", rendered.Html ?? string.Empty, StringComparison.Ordinal);
                Assert.Equal("<script>PLANTED</script>", page.Title);
            },
            1000);
    }

    [Theory]
    [InlineData("x\n{{ 1e90000000 }}", 2, 4)]
    [InlineData("{{ for i in 1..1001e90000000 }}x{{ end }}", 1, 13)]
    [InlineData("{{ 1_0.5E+9_00 }}", 1, 4)]
    [InlineData("{{ LONG }}", 1, 4)]
    public void A_number_that_would_be_written_out_for_hours_is_refused_at_its_place(string template, int line, int column)
    {
        var text = template.Replace("LONG", new string('9', 900_000), StringComparison.Ordinal);
        var problem = Assert.Single(Guard.Run(() => TemplateSet.Parse(new Dictionary<string, string> { ["a.html"] = text })).Problems);
        Assert.Equal((line, column), (problem.Line, problem.Column));
    }

    [Theory]
    [InlineData("<p style=\"color:#1e900000\">{{ page }}</p>")]
    [InlineData("<path d=\"M1e2 3.5e1\"/>{{ if page.count == 12 }}x{{ end }}")]
    public void A_colour_and_a_small_number_are_fine(string template) =>
        Assert.Empty(TemplateSet.Parse(new Dictionary<string, string> { ["a.html"] = template }).Problems);

    [Fact]
    public void A_book_that_can_be_read_can_be_worked_out_and_shown()
    {
        var files = SmallBook.Files();
        string[] paths = [.. files.Keys.Where(p => p.EndsWith(".yaml", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        string[] figures = ["0", "0.01", "0.001", "1", "3", "9", "60", "99", "1000", "100000", "99999999", "0.0000001", "-1", "-0.5", "2023-01-10", "2199-12-31", "1950-01-01", "2025-11-01"];
        var numbers = Gen.Int[0, figures.Length - 1].Select(i => figures[i]);
        Fuzz.Sample(
            "books with other figures",
            Gen.Int[0, paths.Length - 1].SelectMany(i => Gen.Select(Gen.Int[0, 10_000], numbers).List[1, 3].Select(changes => (Path: paths[i], Text: Replaced(files[paths[i]], changes)))),
            changed =>
            {
                var review = SmallBook.Review((changed.Path, changed.Text));
                if (review.IsStopped)
                {
                    return;
                }

                var composition = SmallBook.Compose(review);
                foreach (var page in ShopPageList.All)
                {
                    page.Compose(ShopContext.Of(composition));
                }

                foreach (var view in composition.Book.Units.Values.SelectMany(u => OwnerView.Of(composition.Book, u)))
                {
                    HistoryComposer.Compose(composition, view);
                    foreach (var job in view.Jobs.Where(j => j.Finished is not null))
                    {
                        ReportComposer.Compose(composition, view, job);
                    }
                }
            },
            60);
    }

    // Puts other figures in the place of some of a text's own.
    private static string Replaced(string text, IEnumerable<(int Which, string Figure)> changes)
    {
        foreach (var (which, figure) in changes)
        {
            var found = System.Text.RegularExpressions.Regex.Matches(text, "(?<![A-Za-z0-9-])[0-9][0-9.-]*(?![A-Za-z0-9/])");
            if (found.Count > 0)
            {
                var at = found[which % found.Count];
                text = string.Concat(text.AsSpan(0, at.Index), figure, text.AsSpan(at.Index + at.Length));
            }
        }

        return text;
    }
}
