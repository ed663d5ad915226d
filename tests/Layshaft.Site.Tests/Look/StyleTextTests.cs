using Layshaft.Site.Look;

namespace Layshaft.Site.Tests.Look;

/// <summary>A sheet made small says what it said.</summary>
public class StyleTextTests
{
    [Theory]
    [InlineData("/* a */ a :hover , b > c { color : red ; }\n\n", "a :hover,b>c{color :red}")]
    [InlineData("@media screen and (max-width: 40rem) {\n  .a { margin: 0 -1px calc(1px + 2px); }\n}", "@media screen and (max-width:40rem){.a{margin:0 -1px calc(1px + 2px)}}")]
    [InlineData(".a::after { content: \" a  /* b */ ; } \"; }", ".a::after{content:\" a  /* b */ ; } \"}")]
    [InlineData(".a::after { content: 'it\\'s {'; }", ".a::after{content:'it\\'s {'}")]
    [InlineData(".a\\{b, .\\65  .c { top: 0 }", ".a\\{b,.\\000065 .c{top:0}")]
    [InlineData(".a\\: .b { top: 0 }", ".a\\: .b{top:0}")]
    [InlineData("a/* x */b{}", "a/**/b{}")]
    [InlineData(":root { --x: #FFF; }", ":root{--x:#FFF}")]
    [InlineData("\uFEFFp { top: 0; }", "p{top:0}")]
    public void Blanks_and_comments_go_and_nothing_else(string css, string small) => Assert.Equal(small, StyleText.Of(css, a => a));

    [Theory]
    [InlineData("a { b: c", "a{b:c}")]
    [InlineData("@media print { a { b: c }", "@media print{a{b:c}}")]
    [InlineData("a { b: c } } p { top: 0 }", "a{b:c}p{top:0}")]
    [InlineData("a { content: \"open\n} p { top: 0 }", "a{content:\"open\"}p{top:0}")]
    [InlineData("a { top: 0 } /* open", "a{top:0}")]
    [InlineData("a { content: \"\\", "a{content:\"\\\"}")]
    [InlineData("a { background: url(", "a{background:url(\"\")}")]
    public void What_a_sheet_leaves_open_ends_with_it(string css, string small) => Assert.Equal(small, StyleText.Of(css, a => a));

    [Fact]
    public void Addresses_are_seen_from_the_page_and_an_end_tag_cannot_end_the_element()
    {
        const string Css = "@import 'own.css'; @font-face { src: url( fonts/a.woff2 ) format(\"woff2\"), url('b.woff2'); } a { content: \"</style>\"; }";
        Assert.Equal(
            "@import \"../look/own.css\";@font-face{src:url(\"../look/fonts/a.woff2\") format(\"woff2\"),url(\"../look/b.woff2\")}a{content:\"<\\/style>\"}",
            StyleText.Of(Css, a => "../look/" + a));
    }
}
