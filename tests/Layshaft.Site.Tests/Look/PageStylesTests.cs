using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Site.Building;
using Layshaft.Site.Look;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Tests.Look;

/// <summary>The styles in the head of a page.</summary>
public partial class PageStylesTests
{
    private static PageStyles Styles(params (string Name, string Text)[] sheets) =>
        PageStyles.Of(DemoBook.Review.Assessment!.Book.Shop, sheets.ToDictionary(s => s.Name, s => s.Text));

    [Fact]
    public void The_sheets_stand_in_their_order_imports_first_and_the_pages_own_rules_last()
    {
        var style = Styles((PageStyles.Charts, ".c { top: 0 }"), (PageStyles.Site, "@import 'own.css';\n.s { top: 0; }"), (PageStyles.Wall, ".w { top: 0; }"));
        var text = style.For("../look/", PageStyles.Wall, "@page { margin: 0 }").Text!.Markup;

        Assert.StartsWith("@import \"../look/own.css\";:root{--accent:", text, StringComparison.Ordinal);
        Assert.EndsWith("}.s{top:0}.c{top:0}.w{top:0}@page{margin:0}", text, StringComparison.Ordinal);
        Assert.DoesNotContain(".w", style.For("../look/", null, string.Empty).Text!.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hash_is_that_of_the_text()
    {
        var style = Styles((PageStyles.Site, "@font-face { src: url(fonts/é.woff2); }")).For("look/", null, "p { top: 0; }");
        Assert.Equal(Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style.Text!.Markup))), style.Hash);
        Assert.Null(PageStyles.None.For("look/", null, string.Empty).Text);
    }

    [Fact]
    public void A_changed_sheet_changes_the_fingerprint() =>
        Assert.Equal(3, new[] { Styles(), Styles((PageStyles.Site, "a{}")), Styles((PageStyles.Charts, "a{}")) }.Select(s => s.Fingerprint).Distinct().Count());

    // Ascent and descent of the typeface's file are 966 and 246 of 1000, its line gap 0.
    [Fact]
    public void What_stands_in_for_the_typeface_has_its_height()
    {
        var faces = StandIn().Matches(LookFiles.Sheets(TemplateFolders.BesideProgram())[PageStyles.Site]);
        Assert.Equal(4, faces.Count);
        foreach (var face in faces.Select(f => f.Groups))
        {
            var (size, ascent, descent) = (Number(face[1]), Number(face[2]), Number(face[3]));
            Assert.Equal(0.966, size * ascent, 5e-4);
            Assert.Equal(0.246, size * descent, 5e-4);
        }

        static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture) / 100;
    }

    [GeneratedRegex("size-adjust: ([0-9.]+)%; ascent-override: ([0-9.]+)%; descent-override: ([0-9.]+)%; line-gap-override: 0%;")]
    private static partial Regex StandIn();
}
