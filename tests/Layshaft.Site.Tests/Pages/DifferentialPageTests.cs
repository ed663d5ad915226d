using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Pages;

/// <summary>A differential on its own: its report, its estimate and its history call it what it is and show how it was built.</summary>
public sealed class DifferentialPageTests
{
    private const string Job = "jobs/2026/0623/job.yaml";
    private static readonly Texts s_texts = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;

    [Fact]
    public void The_report_shows_ramps_plates_faces_and_locking()
    {
        var rows = Report(DemoBook.Composition()).QuerySelectorAll("#differential tbody tr").Select(r => string.Join('|', r.Children.Select(c => c.TextContent.Trim().Replace('\u202F', ' ').Replace('\u00A0', ' '))));

        // 4 × 0.10 × 47 mm ÷ (34 mm × tan α): 0.553 at 45°, 0.319 at 60°, 0.097 at 80°, each ±20 %.
        Assert.Equal(
            [
                "Ramp angles (drive/coast)|45°/60°|45°/80°", "Plates of each side|O-I-O-I-O|O-I-O-I-O", "Friction faces on each side|4|4",
                "Locking under power|44 to 66 %|44 to 66 %", "Locking on the overrun|26 to 38 %|8 to 12 %",
            ],
            rows);
    }

    [Fact]
    public void The_driver_reads_what_changed_and_why()
    {
        var lines = Report(DemoBook.Composition()).QuerySelectorAll("#differential p").Select(p => p.TextContent.Trim()).ToArray();

        Assert.Equal([s_texts.Say("differential.power.same"), s_texts.Say("differential.overrun.less")], lines.Take(2));
        Assert.StartsWith("A coast ramp of 80°", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void A_coast_ramp_of_90_degrees_does_not_lock()
    {
        var review = DemoBook.With(
            Job, t => t.Replace("built: { ramps: 45°/80°", "built: { ramps: 45°/90°", StringComparison.Ordinal),
            ("gearboxes/corrick-pd.yaml", Text("gearboxes/corrick-pd.yaml").Replace("45°/80°", "45°/90°", StringComparison.Ordinal)));

        Assert.Equal("none", Report(DemoBook.Composition(review)).QuerySelector("#differential tbody tr:last-child td:last-child")!.TextContent.Trim());
    }

    [Fact]
    public void What_was_not_recorded_is_stated()
    {
        var review = DemoBook.With(Job, t => System.Text.RegularExpressions.Regex.Replace(t, "differential:\n(?:  .*\n)+", string.Empty));

        Assert.Contains(s_texts.Say("differential.not_recorded"), Report(DemoBook.Composition(review)).QuerySelector("#differential")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void No_page_of_the_differential_calls_it_a_gearbox()
    {
        var open = DemoBook.With(Job, t => t[..t.IndexOf("go_ahead:", StringComparison.Ordinal)].Replace("verdict: >-", "verdict_: >-", StringComparison.Ordinal).Replace("verdict_: >-\n  The lined plates were worn out and the preload was gone. New plates, new spring and a steeper coast ramp put drive and turn-in right.\n", string.Empty, StringComparison.Ordinal));
        foreach (var composition in new[] { DemoBook.Composition(), DemoBook.Composition(open) })
        {
            var pages = DemoBook.Pages(composition, p => p.StartsWith("customers/pd-041-0/", StringComparison.Ordinal)).ToArray();

            Assert.Equal(2, pages.Length);
            Assert.All(pages, p => Assert.DoesNotContain("your gearbox", new HtmlParser().ParseDocument(p.Html).DocumentElement.TextContent, StringComparison.OrdinalIgnoreCase));
            Assert.All(pages, p => Assert.DoesNotContain("gearbox PD-041", p.Html, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void Its_cautions_warn_of_the_wheel_that_still_drives()
    {
        Assert.Contains(s_texts.Say("caution.differential"), Report(DemoBook.Composition()).QuerySelectorAll("#cautions li").Select(l => l.TextContent.Trim()));
        Assert.DoesNotContain("gearbox is heavy", Report(DemoBook.Composition()).QuerySelector("#cautions")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_history_lists_the_builds()
    {
        var history = new HtmlParser().ParseDocument(DemoBook.Pages(DemoBook.Composition(), p => p == "customers/pd-041-0/index.html").Single().Html);

        var row = Assert.Single(history.QuerySelectorAll("#differential tbody tr"));
        Assert.Contains("45°/80°, O-I-O-I-O", row.TextContent, StringComparison.Ordinal);
    }

    private static IDocument Report(Layshaft.Site.Pages.Composition composition) =>
        new HtmlParser().ParseDocument(DemoBook.Pages(composition, p => p == "customers/pd-041-0/0623/index.html").Single().Html);

    private static string Text(string path) => System.Text.Encoding.UTF8.GetString(DemoBook.Review.Files.Read(path));
}
