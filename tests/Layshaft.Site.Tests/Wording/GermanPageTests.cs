using System.Text.RegularExpressions;
using AngleSharp.Html.Parser;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Wording;

/// <summary>The demo with a shop that chose its language, marks and units: the pages, not the words alone.</summary>
public partial class GermanPageTests
{
    private static readonly Lazy<Dictionary<string, string>> s_german = new(() => Pages("language: de\n", p => IsReport(p) || p.StartsWith("shop/", StringComparison.Ordinal) || p == "reference/terms.html"));

    private static bool IsReport(string path) => path.EndsWith("0615/index.html", StringComparison.Ordinal);

    private static Dictionary<string, string> Pages(string choice, Func<string, bool> wanted)
    {
        var review = DemoBook.With("shop.yaml", shop => choice + UnitsLine().Replace(shop, string.Empty));
        var (texts, problems, notices) = TextsLoader.Load(TemplateFolders.BesideProgram(), review.Assessment!.Book.Shop.Language);
        Assert.Empty(problems);
        Assert.Empty(notices);
        return DemoBook.Pages(DemoBook.Composition(review, texts), wanted).ToDictionary(p => p.Path, p => p.Html);
    }

    private static string ReportWith(string choice) => Seen(Pages(choice, IsReport).First().Value);

    private static string Seen(string html) => Space().Replace(new HtmlParser().ParseDocument(html).Body!.TextContent, " ");

    [Fact]
    public void Every_page_names_its_language() =>
        Assert.All(s_german.Value, p => Assert.Contains("<html lang=\"de\">", p.Value, StringComparison.Ordinal));

    [Fact]
    public void Figures_have_a_comma_and_dates_German_months()
    {
        Assert.True(s_german.Value.Count > 6);
        foreach (var (path, html) in s_german.Value)
        {
            var pointed = PointedFigure().Match(Seen(html));
            Assert.False(pointed.Success, $"{path}: {pointed.Value}");
        }

        var report = Seen(s_german.Value.First(p => IsReport(p.Key)).Value);
        Assert.Contains("8. Juni 2026", report, StringComparison.Ordinal);
        Assert.Contains("92,5 h", report, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_may_choose_other_marks_dates_and_units_than_its_language_has()
    {
        var report = ReportWith("language: de\nnumbers: {decimals: point, thousands: mark}\ndates: iso\nunits: {speed: mph, length: in, torque: lbf·ft}\n");
        Assert.Contains("2026-06-08", report, StringComparison.Ordinal);
        Assert.Contains("92.5 h", report, StringComparison.Ordinal);
        Assert.Matches(@"\d,\d{3} U/min", report);
        Assert.Matches(@"0\.\d{4,5} in\b", report);
        Assert.Matches(@"\d lbf·ft", report);
        Assert.Matches(@"\d mph", report);
    }

    [Fact]
    public void English_may_have_a_comma_and_no_mark_between_thousands()
    {
        var report = ReportWith("numbers: {decimals: comma, thousands: none}\n");
        Assert.Contains("92,5 h", report, StringComparison.Ordinal);
        Assert.Matches(@"(?<!\d)\d{5} rpm|(?<!\d)\d{4} rpm", report);
        Assert.Matches(@"\d km/h", report);
    }

    // A figure with a unit that has a point; 15.5-13 in a tyre's size or 1.1 in a number of a chapter has no unit after it.
    [GeneratedRegex(@"(?<![\d.,/A-Z-])\d+\.\d+(?= (mm|s|h|km/h|N·m|%|°))")]
    private static partial Regex PointedFigure();

    [GeneratedRegex(@"^units:.*\n", RegexOptions.Multiline)]
    private static partial Regex UnitsLine();

    [GeneratedRegex(@"[\s\u202F\u00A0]+")]
    private static partial Regex Space();
}
