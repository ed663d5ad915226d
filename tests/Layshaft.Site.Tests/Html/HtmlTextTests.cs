using System.Net;
using CsCheck;
using Layshaft.Site.Html;

namespace Layshaft.Site.Tests.Html;

/// <summary>Escaping, the one thing between a technician's text and a customer's page.</summary>
public sealed class HtmlTextTests
{
    [Theory]
    [InlineData("plain Ä 14 µm 😀", "plain Ä 14 µm 😀")]
    [InlineData("<a href=\"x\">'&'</a>", "&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/a&gt;")]
    [InlineData("a\0b\u0007c\u007Fd", "a\uFFFDb\uFFFDc\uFFFDd")]
    [InlineData("tab\tline\n", "tab\tline\n")]
    public void Text_is_escaped(string text, string expected) => Assert.Equal(expected, HtmlText.Escape(text));

    [Fact]
    public void Surrogates_that_stand_alone_are_replaced()
    {
        Assert.Equal("a\uFFFDb", HtmlText.Escape("a\uD83Db"));
        Assert.Equal("\uFFFD", HtmlText.Clean("\uDE00"));
        Assert.Equal("😀\uFFFD😀", HtmlText.Clean("😀\uDE00😀"));
    }

    [Fact]
    public void Clean_leaves_markup_characters_alone() => Assert.Equal("<&>\uFFFD", HtmlText.Clean("<&>\u0001"));

    [Fact]
    public void Any_text_comes_back_from_a_decoder_as_its_cleaned_self() =>
        Gen.String.Sample(text =>
        {
            var escaped = HtmlText.Escape(text);
            Assert.DoesNotContain(escaped, c => c is '<' or '>' or '"' or '\'');
            Assert.Equal(HtmlText.Clean(text), WebUtility.HtmlDecode(escaped));
        });
}
