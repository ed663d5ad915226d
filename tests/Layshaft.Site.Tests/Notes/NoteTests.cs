using CsCheck;
using Layshaft.Site.Notes;

namespace Layshaft.Site.Tests.Notes;

/// <summary>What becomes of a technician's note.</summary>
public sealed class NoteTests
{
    private static string Html(string note, int level = 2) => NoteRenderer.Render(note, level).Html.Markup;

    [Theory]
    [InlineData("A *b* **c** ~~d~~", "<p>A <em>b</em> <strong>c</strong> <del>d</del></p>\n")]
    [InlineData("- a\n- b", "<ul>\n<li>a</li>\n<li>b</li>\n</ul>\n")]
    [InlineData("# a\n## b", "<h3>a</h3>\n<h4>b</h4>\n")]
    [InlineData("see https://a.example", "<p>see https://a.example</p>\n")]
    [InlineData("[x](../photos.html)", "<p><a href=\"../photos.html\">x</a></p>\n")]
    [InlineData("[x](mailto:a@b.example)", "<p><a href=\"mailto:a@b.example\" class=\"spell-link\" data-address=\"a@b.example\">x</a></p>\n")]
    [InlineData("[x](tel:+4912345)", "<p><a href=\"tel:+4912345\">x</a></p>\n")]
    [InlineData("[x](https://a.example/?a=b&c)", "<p><a href=\"https://a.example/?a=b&amp;c\" class=\"spell-link\" rel=\"noreferrer\" data-address=\"https://a.example/?a=b&amp;c\">x</a></p>\n")]
    [InlineData("<https://a.example>", "<p><a href=\"https://a.example\" rel=\"noreferrer\">https://a.example</a></p>\n")]
    [InlineData("[https://a.example](https://a.example)", "<p><a href=\"https://a.example\" rel=\"noreferrer\">https://a.example</a></p>\n")]
    [InlineData("[A@b.example](mailto:a@b.example?subject=x)", "<p><a href=\"mailto:a@b.example?subject=x\">A@b.example</a></p>\n")]
    [InlineData("a\r\nb", "<p>a\nb</p>\n")]
    [InlineData("  ", "")]
    [InlineData("- - - - - - - - - - - - - - - -", "<hr />\n")]
    [InlineData("----------------------------------------------", "<hr />\n")]
    public void A_note_becomes_markup(string note, string expected) => Assert.Equal(expected, Html(note));

    [Fact]
    public void Tables_are_aligned_by_class()
    {
        var html = Html("a | b\n--|-:\n1 | 2");
        Assert.Contains("<td class=\"align-end\">2</td>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("style", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "<h2>", "<h6>")]
    [InlineData(5, "<h6>", "<h6>")]
    public void Headings_fit_below_the_pages_own(int level, string first, string sixth)
    {
        Assert.StartsWith(first, Html("# a", level), StringComparison.Ordinal);
        Assert.StartsWith(sixth, Html("###### a", level), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](JaVaScRiPt:alert(1))")]
    [InlineData("[x](java&Tab;script:alert(1))")]
    [InlineData("[x](java&#x0A;script:alert(1))")]
    [InlineData("[x](&#1;javascript:alert(1))")]
    [InlineData("[x](javascript&colon;alert(1))")]
    [InlineData("[x](javascript%3Aalert(1))")]
    [InlineData("[x](<javascript:alert(1)>)")]
    [InlineData("[x](< javascript:alert(1)>)")]
    [InlineData("<javascript:alert(1)>")]
    [InlineData("[x][r]\n\n[r]: vbscript:msgbox(1)")]
    [InlineData("[x](data:text/html,a)")]
    [InlineData("[x](file:///etc/passwd)")]
    [InlineData("[x](//evil.example)")]
    [InlineData("[x](/\\evil.example)")]
    [InlineData("[x](\\\\\\\\evil.example)")]
    [InlineData("[![y](https://a.example/p.png)](javascript:alert(1))")]
    public void Links_that_could_run_or_leave_unseen_become_text(string note)
    {
        var result = NoteRenderer.Render(note, 2);
        Assert.DoesNotContain("href", result.Html.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(result.Problems);
        Assert.All(result.Problems, p => Assert.Equal(1, p.Line));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("a <img src=x onerror=alert(1)> b")]
    [InlineData("<div>\nx\n</div>")]
    [InlineData("<!-- x -->")]
    public void Raw_markup_is_shown_as_text(string note)
    {
        Assert.DoesNotContain("<script", Html(note), StringComparison.Ordinal);
        Assert.DoesNotContain("<img", Html(note), StringComparison.Ordinal);
        Assert.DoesNotContain("<div", Html(note), StringComparison.Ordinal);
        Assert.Contains("&lt;", Html(note), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[x](https://a.example){onclick=alert(1)}", "onclick=alert(1)}</p>")]
    [InlineData("# a {#id .class style=x}", "<h3>a {#id .class style=x}</h3>")]
    public void Attributes_cannot_be_set(string note, string expected) => Assert.Contains(expected, Html(note), StringComparison.Ordinal);

    [Fact]
    public void A_picture_becomes_its_caption_and_a_problem()
    {
        var result = NoteRenderer.Render("\n\nsee ![the **dogs**](x.png)", 2);
        Assert.Equal("<p>see the <strong>dogs</strong></p>\n", result.Html.Markup);
        Assert.Equal(3, Assert.Single(result.Problems).Line);
    }

    [Theory]
    [InlineData(">", 5_000)]
    [InlineData("- ", 5_000)]
    [InlineData("1. ", 5_000)]
    [InlineData("> - ", 5_000)]
    [InlineData("[", 20_000)]
    [InlineData("*a ", 10_000)]
    [InlineData("`", 30_000)]
    [InlineData("![", 10_000)]
    [InlineData("a|", 10_000)]
    public void Hostile_nesting_ends_in_markup_or_a_problem(string piece, int times)
    {
        var result = NoteRenderer.Render(string.Concat(Enumerable.Repeat(piece, times)) + "x", 2);
        Assert.True(result.Html.Markup.Length > 0 || result.Problems.Count == 1);
    }

    [Fact]
    public void In_a_plain_note_nothing_is_wrong_whatever_its_signs() =>
        Gen.Char["ab1 \n\t*_~>-+.)|`#!\\&(]:\"'/"].Array[0, 300].Select(c => new string(c)).Sample(
            note => !NoteRenderer.IsPlain(note) || NoteRenderer.Render(note, 2).Problems.Count == 0,
            iter: 3000);

    [Theory]
    [InlineData("Second gear was worn. It is new now - 12 marks, 3.5 mm.", true)]
    [InlineData("See [this](javascript:alert(1)).", false)]
    [InlineData("See <javascript:alert(1)>.", false)]
    [InlineData("![the ring](ring.jpg)", false)]
    public void A_note_is_plain_without_links_and_pictures(string note, bool isPlain) => Assert.Equal(isPlain, NoteRenderer.IsPlain(note));

    [Fact]
    public void A_note_too_long_is_a_problem() =>
        Assert.Contains("32,768 characters", Assert.Single(NoteRenderer.Render(new string('a', NoteRenderer.LongestNote + 1), 2).Problems).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void The_heading_above_has_a_level_from_one_to_five(int level) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NoteRenderer.Render("a", level));
}
