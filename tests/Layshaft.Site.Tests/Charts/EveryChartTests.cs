using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Layshaft.Site.Charts;

namespace Layshaft.Site.Tests.Charts;

/// <summary>What holds for every chart, in both sizes.</summary>
public class EveryChartTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string, ChartSize> Cases() => EveryChart.Cases();

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_chart_looks_as_it_was_approved(string name, ChartSize size)
    {
        ArgumentNullException.ThrowIfNull(name);
        Approved.Matches($"{name}-{(size == ChartSize.Wide ? "wide" : "compact")}", EveryChart.Draw(name, size));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_chart_is_one_named_and_described_svg_element(string name, ChartSize size)
    {
        var root = XElement.Parse(EveryChart.Draw(name, size).Markup);

        Assert.Equal(Svg + "svg", root.Name);
        var ids = $"{root.Attribute("aria-labelledby")!.Value} {root.Attribute("aria-describedby")?.Value}".Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal([root.Element(Svg + "title")!.Attribute("id")!.Value, root.Element(Svg + "desc")!.Attribute("id")!.Value], ids);
        Assert.NotEmpty(root.Element(Svg + "title")!.Value);
        Assert.NotEmpty(root.Element(Svg + "desc")!.Value);
        Assert.StartsWith($"0 0 {(size == ChartSize.Wide ? 720 : 360)} ", root.Attribute("viewBox")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Role_img_holds_no_links_and_links_have_names(string name, ChartSize size)
    {
        var root = XElement.Parse(EveryChart.Draw(name, size).Markup);
        var links = root.Descendants(Svg + "a").ToList();

        Assert.Equal(links.Count > 0 ? "group" : "img", root.Attribute("role")!.Value);
        Assert.All(links, a => Assert.NotEmpty(a.Attribute("aria-label")!.Value));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_chart_obeys_the_strict_content_policy(string name, ChartSize size)
    {
        var root = XElement.Parse(EveryChart.Draw(name, size).Markup);

        Assert.DoesNotContain(root.DescendantsAndSelf(), e => e.Name.LocalName is "style" or "script" or "image" or "foreignObject");
        Assert.DoesNotContain(
            root.DescendantsAndSelf().Attributes(),
            a => a.Name.LocalName == "style" || a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Ids_are_unique_and_start_with_the_prefix_and_the_size(string name, ChartSize size)
    {
        var root = XElement.Parse(EveryChart.Draw(name, size).Markup);
        var ids = root.DescendantsAndSelf().Attributes("id").Select(a => a.Value).ToList();

        Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.All(ids, id => Assert.Matches($"^[a-z]+-{(size == ChartSize.Wide ? "w" : "c")}-", id));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Numbers_are_finite_plain_and_rounded(string name, ChartSize size)
    {
        var markup = EveryChart.Draw(name, size).Markup;

        Assert.DoesNotContain("NaN", markup, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", markup, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", markup, StringComparison.Ordinal);
        foreach (var attribute in XElement.Parse(markup).DescendantsAndSelf().Attributes().Where(a => a.Name.LocalName is "d" or "x" or "y" or "x1" or "x2" or "y1" or "y2" or "cx" or "cy" or "r" or "width" or "height"))
        {
            Assert.Matches("^[MLAZ0-9 .-]+$", attribute.Value);
            Assert.DoesNotMatch(@"\.\d{3}", attribute.Value);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_class_has_a_rule_in_the_stylesheet(string name, ChartSize size)
    {
        var rules = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "charts.css"));
        var classes = XElement.Parse(EveryChart.Draw(name, size).Markup).DescendantsAndSelf().Attributes("class")
            .SelectMany(a => a.Value.Split(' ')).Distinct(StringComparer.Ordinal);

        Assert.All(classes, c => Assert.Matches($@"\.{Regex.Escape(c)}[\s,.{{:>]", rules));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_chart_has_the_same_bytes_in_any_culture(string name, ChartSize size)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            var plain = EveryChart.Draw(name, size).Markup;
            foreach (var culture in new[] { "tr-TR", "de-DE", "fa-IR", "sv-SE" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(plain, EveryChart.Draw(name, size).Markup);
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Labels_stay_inside_the_sheet(string name, ChartSize size)
    {
        var root = XElement.Parse(EveryChart.Draw(name, size).Markup);
        var box = root.Attribute("viewBox")!.Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        foreach (var text in root.Descendants(Svg + "text"))
        {
            var (left, right, top, bottom) = DrawnText.Box(text);
            Assert.True(left >= -2 && right <= box[2] + 2, $"'{text.Value}' runs from {left:0} to {right:0} of {box[2]}.");
            Assert.True(top >= -1 && bottom <= box[3], $"'{text.Value}' stands from {top:0} to {bottom:0} of {box[3]}.");
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_label_covers_another(string name, ChartSize size)
    {
        var texts = XElement.Parse(EveryChart.Draw(name, size).Markup).Descendants(Svg + "text").Where(t => t.Value.Length > 0).ToList();
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = i + 1; j < texts.Count; j++)
            {
                Assert.False(DrawnText.Overlap(texts[i], texts[j]), $"'{texts[i].Value}' covers '{texts[j].Value}'.");
            }
        }
    }
}
