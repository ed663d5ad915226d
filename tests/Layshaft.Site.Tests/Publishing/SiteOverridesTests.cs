using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Publishing;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>A shop's own words, templates, stylesheet and colour, from its book to its published site.</summary>
public sealed class SiteOverridesTests : IDisposable
{
    private readonly TempFolder _temp = new();

    public SiteOverridesTests()
    {
        foreach (var (path, text) in SmallBook.Files())
        {
            _temp.Write($"book/{path}", text);
        }
    }

    public void Dispose() => _temp.Dispose();

    private string Site => _temp.At("site");

    private SitePreparation Prepare() => SitePreparation.Of(BookReview.OfFolder(_temp.At("book")), _temp.At("book"));

    private void InShopFile(string line) => _temp.Write("book/shop.yaml", $"{line}\n{SmallBook.Shop}");

    private SitePreparation Publish()
    {
        var prepared = Prepare();
        Assert.True(prepared.Builder is not null, string.Join('\n', prepared.Problems));
        Assert.Equal(PublishOutcome.Published, new Publisher(new PublishOptions { Book = _temp.At("book") }).Publish(prepared.Builder.Plan(), Site).Outcome);
        return prepared;
    }

    private IReadOnlyList<string> Reports => [.. Directory.EnumerateFiles(Path.Combine(Site, "customers"), "index.html", SearchOption.AllDirectories)
        .Select(File.ReadAllText).Where(t => t.Contains("class=\"verdict\"", StringComparison.Ordinal))];

    [Fact]
    public void Closing_words_are_on_every_page_and_cautions_on_every_report()
    {
        InShopFile("closing_words: Ring us *before* you strip it yourself.\ncautions: [Wait until it has cooled.]");
        Publish();
        Assert.NotEmpty(Reports);
        Assert.All(Reports, r => Assert.Contains("Ring us <em>before</em> you strip it yourself.", r, StringComparison.Ordinal));
        Assert.All(Reports.Where(r => r.Contains("id=\"cautions\"", StringComparison.Ordinal) && !r.Contains("class=\"answer\"", StringComparison.Ordinal)), r => Assert.Contains("<li>Wait until it has cooled.</li>", r, StringComparison.Ordinal));
        Assert.Contains(Reports, r => r.Contains("id=\"cautions\"", StringComparison.Ordinal));
    }

    [Fact]
    public void A_section_of_the_shops_own_takes_the_place_of_ours_and_the_rest_stays()
    {
        _temp.Write("book/templates/sections/complaint.html", "<p class=\"own\">You said: “{{ $0.complaint }}”</p>\n");
        Publish();
        Assert.Contains(Reports, r => r.Contains("<p class=\"own\">You said: “Second says hello.”</p>", StringComparison.Ordinal));
        Assert.All(Reports, r => Assert.DoesNotContain("<blockquote>", r, StringComparison.Ordinal));
        Assert.All(Reports, r => Assert.Contains("<footer", r, StringComparison.Ordinal));
    }

    [Fact]
    public void A_stylesheet_of_the_shops_own_takes_the_place_of_ours()
    {
        _temp.Write("book/templates/look/site.css", "body { font-size: 2rem; }\n");
        Publish();
        Assert.All(Reports, r => Assert.Contains("}body{font-size:2rem}.chart{", r, StringComparison.Ordinal));
        Assert.All(Reports, r => Assert.DoesNotContain("@font-face", r, StringComparison.Ordinal));
    }

    [Fact]
    public void A_template_that_cannot_be_read_is_a_problem_at_its_line_before_anything_is_published()
    {
        _temp.Write("book/templates/sections/work.html", "<p>\n{{ if $0.renewed.size > 0 }}\n");
        var problem = Assert.Single(Stopped());
        Assert.Equal("templates/sections/work.html", problem.Place.File);
        Assert.InRange(problem.Place.Line, 2, 3);
    }

    [Theory]
    [InlineData("<p>\n{{ $0.complant }}</p>", 2, "There is no 'complant' in this value. Did you mean 'complaint'?")]
    [InlineData("{{ say \"report.complain\" }}", 1, "There is no text 'report.complain'. Did you mean 'report.complaint'?")]
    [InlineData("\n\n{{ include \"sections/finding.htm\" $0 }}", 3, "There is no template 'sections/finding.htm'. Did you mean 'sections/finding.html'?")]
    [InlineData("{{ pages.head }}", 1, "There is no 'pages' here. Did you mean 'page'?")]
    public void A_name_that_a_template_mistypes_is_a_problem_at_its_line_with_the_nearest_known_one_and_nothing_is_published(string template, int line, string said)
    {
        Publish();
        var before = SiteFiles();
        _temp.Write("book/templates/sections/complaint.html", template);
        var prepared = Prepare();
        var failed = Assert.Throws<PageException>(() => new Publisher(new PublishOptions { Book = _temp.At("book") }).Publish(prepared.Builder!.Plan(), Site));
        var problem = Assert.Single(failed.Problems);
        Assert.Equal(said, problem.Message);
        Assert.Equal(("templates/sections/complaint.html", line), (prepared.Own!.PlaceOf(problem).File, prepared.Own.PlaceOf(problem).Line));
        Assert.Equal(before, SiteFiles());
    }

    [Fact]
    public void Words_of_the_shops_own_replace_ours_one_by_one()
    {
        _temp.Write("book/templates/texts/en.yaml", "report.complaint: What brought you here\n");
        Publish();
        Assert.Contains(Reports, r => r.Contains(">What brought you here</h2>", StringComparison.Ordinal));
        Assert.Contains(Reports, r => r.Contains(">What we found</h2>", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mistyped_key_of_the_shops_words_stops_the_publish_at_its_line()
    {
        _temp.Write("book/templates/texts/en.yaml", "report.complaint: x\nreport.finding: y\n");
        var problem = Assert.Single(Stopped());
        Assert.Equal(("templates/texts/en.yaml", 2), (problem.Place.File, problem.Place.Line));
        Assert.Contains("'report.finding'", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_language_of_the_shops_own_is_published_with_English_where_it_has_no_words()
    {
        InShopFile("language: cy");
        _temp.Write("book/templates/texts/cy.yaml", "report.complaint: Beth ddywedoch chi\nfigures.decimal_mark: \",\"\n");
        var prepared = Publish();
        Assert.All(Reports, r => Assert.Contains("<html lang=\"cy\">", r, StringComparison.Ordinal));
        Assert.Contains(Reports, r => r.Contains("Beth ddywedoch chi", StringComparison.Ordinal) && r.Contains("What we found", StringComparison.Ordinal));
        var notices = prepared.Problems.Where(p => p.Code == "texts").ToArray();
        Assert.All(notices, n => Assert.Equal(("templates/texts/cy.yaml", Severity.Notice), (n.Place.File, n.Severity)));
        Assert.Matches(@"^\d+ more texts are missing", notices[^1].Message);
    }

    [Fact]
    public void A_language_that_nobody_wrote_is_a_problem_in_the_shop_file()
    {
        InShopFile("language: fr");
        var problem = Assert.Single(Stopped());
        Assert.Equal(("shop.yaml", 1), (problem.Place.File, problem.Place.Line));
        Assert.Contains("Write one of: de, en", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_colour_too_pale_to_read_is_darkened_and_the_shop_is_told()
    {
        InShopFile("colour: \"#f2b705\"");
        var notice = Assert.Single(Publish().Problems, p => p.Code == "contrast");
        Assert.Equal((Severity.Notice, "shop.yaml", 1), (notice.Severity, notice.Place.File, notice.Place.Line));
        var used = System.Text.RegularExpressions.Regex.Match(notice.Message, "#[0-9a-f]{6} instead").Value[..7];
        Assert.StartsWith("The contrast of #f2b705 on the page background is 1.6:1, but text needs 4.5:1 (WCAG 2.2, success criterion 1.4.3)", notice.Message, StringComparison.Ordinal);
        Assert.All(Reports, r => Assert.Contains($":root{{--accent:{used};", r, StringComparison.Ordinal));
    }

    [Fact]
    public void A_colour_that_can_be_read_is_taken_as_it_is_without_a_word()
    {
        InShopFile("colour: \"#1f4e5f\"");
        Assert.DoesNotContain(Publish().Problems, p => p.Code == "contrast");
        Assert.All(Reports, r => Assert.Contains(":root{--accent:#1f4e5f;", r, StringComparison.Ordinal));
    }

    private IReadOnlyList<Problem> Stopped()
    {
        var prepared = Prepare();
        Assert.Null(prepared.Builder);
        return [.. prepared.Problems.Where(p => p.Severity == Severity.Stops)];
    }

    private string[] SiteFiles() => [.. Directory.EnumerateFiles(Site, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(p => $"{p} {File.ReadAllText(p).GetHashCode(StringComparison.Ordinal)}")];
}
