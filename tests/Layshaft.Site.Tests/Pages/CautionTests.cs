using AngleSharp.Html.Parser;
using Layshaft.Site.Templates;
using Layshaft.Site.Tests.Seasons;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Pages;

/// <summary>The cautions are on the pages that need them, in their order.</summary>
public sealed class CautionTests
{
    private const string EstimateJob = "jobs/2025/0004/job.yaml";
    private static readonly Texts s_texts = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;
    private static readonly string[] ToDrive = [.. new[] { "manual", "road" }.Select(c => s_texts.Say($"caution.{c}"))];
    private static readonly string[] ToWork = [.. new[] { "work", "stands", "lift", "hot" }.Select(c => s_texts.Say($"caution.{c}"))];

    [Theory]
    [InlineData("customers/key-a-1/0003/index.html", new[] { "SHOP-CAUTION", "BOX-CAUTION" })]
    [InlineData("customers/key-b-0/0004/index.html", new string[0])]
    public void A_report_and_an_estimate_list_the_cautions_and_a_report_the_shops_and_the_gearboxs_own(string page, string[] own)
    {
        var site = SmallBook.Publish(("shop.yaml", SmallBook.Shop + "\ncautions: [SHOP-CAUTION]\n"), ("gearboxes/four.yaml", SmallBook.Gearbox + "\ncautions: [BOX-CAUTION]\n"));
        var list = new HtmlParser().ParseDocument(site[page]).QuerySelectorAll("#cautions .caution li").Select(li => li.TextContent);
        Assert.Equal([.. ToDrive, .. own, .. ToWork], list);
    }

    [Fact]
    public void Doing_nothing_has_its_caution_if_some_work_is_essential()
    {
        var job = SmallBook.Files()[EstimateJob];
        Assert.EndsWith(s_texts.Say("estimate.declined"), NoAnswer(job), StringComparison.Ordinal);
        Assert.EndsWith($"{s_texts.Say("estimate.answer.no")} ({s_texts.Say("estimate.refused.ask")})", NoAnswer(job.Replace("quantity: 2", "quantity: 2, need: should", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_history_cautions_after_a_refusal_until_the_unit_comes_in_again()
    {
        var declined = SmallBook.Files()[EstimateJob] + "go_ahead: { answer: no, on: 2025-12-05 }\n";
        Assert.Equal([s_texts.Say("estimate.declined")], HistoryCautions((EstimateJob, declined)));
        Assert.Empty(HistoryCautions());
        Assert.Empty(HistoryCautions((EstimateJob, declined.Replace("quantity: 2", "quantity: 2, need: can wait", StringComparison.Ordinal))));
        Assert.Empty(HistoryCautions((EstimateJob, declined), ("jobs/2026/0005/job.yaml", SmallBook.Job("b", "2026-02-01", "31 h", "complaint: Worse.\n"))));
    }

    [Fact]
    public void Every_gearing_table_and_wall_chart_says_that_its_speeds_are_not_permitted_speeds()
    {
        var pages = DemoBook.Pages(DemoBook.Composition(), p => p.StartsWith("reference/", StringComparison.Ordinal) && p.EndsWith(".html", StringComparison.Ordinal) && p.Count(c => c == '/') == 1)
            .Where(p => p.Path is not ("reference/index.html" or "reference/terms.html")).ToArray();
        Assert.Contains(pages, p => p.Path.Contains("wall", StringComparison.Ordinal));
        Assert.True(pages.Length > 4);
        Assert.All(pages, p => Assert.Contains(s_texts.Say("reference.manual"), new HtmlParser().ParseDocument(p.Html).Body!.TextContent, StringComparison.Ordinal));
    }

    private static string NoAnswer(string job) =>
        new HtmlParser().ParseDocument(SmallBook.Publish((EstimateJob, job))["customers/key-b-0/0004/index.html"]).QuerySelectorAll(".answer li")
            .Select(li => li.TextContent).Single(t => t.StartsWith(s_texts.Say("estimate.answer.no"), StringComparison.Ordinal));

    private static IEnumerable<string> HistoryCautions(params (string Path, string Text)[] changes) =>
        new HtmlParser().ParseDocument(SmallBook.Publish(changes)["customers/key-b-0/index.html"]).QuerySelectorAll(".caution li").Select(li => li.TextContent);
}
