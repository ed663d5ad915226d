using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>The sheet that goes to the bench names everything there is to measure and to do, and no customer page links to it.</summary>
public sealed class BenchSheetTests
{
    private static readonly Composition s_demo = DemoBook.Composition();

    [Fact]
    public void It_has_every_measure_with_sizes_and_what_was_seen_last()
    {
        var job = s_demo.Book.Jobs.Single(j => j.Number == "0636");
        var unit = s_demo.Book.Units[job.Unit];
        var box = s_demo.Book.GearboxOf(unit);

        var sheet = BenchSheet.Compose(s_demo, unit, job);

        Assert.Equal(box.Parts.Select(p => (p.Name, p.Measures.Count)), sheet.Parts.Select(p => (p.Name, p.Measures.Count)));
        var corner = sheet.Parts.Single(p => p.Name == "Dog ring, 1st and 2nd").Measures[0];
        Assert.Equal("0.30 mm, 0.80 mm, 1.20 mm", $"{corner.New}, {corner.Watch}, {corner.Limit}".Replace('\u202F', ' ')); // 0.30 mm + 55 % of 0.90 mm
        Assert.All(sheet.Parts.SelectMany(p => p.Measures), m => Assert.NotNull(m.Instrument));
        Assert.Contains(sheet.Parts.SelectMany(p => p.Measures), m => m.Last is not null);
        Assert.Contains(sheet.Parts, p => p.Last is not null);
        Assert.Equal(box.Settings.Count, sheet.Settings.Count);
    }

    [Fact]
    public void Each_step_has_its_caution()
    {
        var job = s_demo.Book.Jobs.Single(j => j.Number == "0636");
        var unit = s_demo.Book.Units[job.Unit];
        var box = s_demo.Book.GearboxOf(unit);

        var sheet = BenchSheet.Compose(s_demo, unit, job);

        Assert.Equal(box.Strip.Select(s => (s.Do, s.Caution)), sheet.Strip!.Steps.Select(s => (s.Words, s.Caution)));
        Assert.Equal(box.Build.Select(s => (s.Do, s.Caution)), sheet.Build!.Steps.Select(s => (s.Words, s.Caution)));
        Assert.Contains($"all {box.Build.Count}'", sheet.Build.All, StringComparison.Ordinal);
    }

    [Fact]
    public void Jobs_on_the_bench_have_one_in_the_workshops_folder_and_only_the_bench_page_links_to_it()
    {
        var pages = DemoBook.Pages(s_demo).ToDictionary(p => p.Path, p => p.Html, StringComparer.Ordinal);
        string[] sheets = [.. s_demo.Book.Jobs.Where(j => ShopContext.IsOnTheBench(j, s_demo.Book)).Select(Addresses.BenchSheet)];

        Assert.NotEmpty(sheets);
        Assert.Equal(sheets.Order(StringComparer.Ordinal), pages.Keys.Where(p => p.Contains("/sheet-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Equal(["shop/index.html"], pages.Where(p => p.Value.Contains("sheet-", StringComparison.Ordinal) && sheets.Any(s => p.Value.Contains(s[5..], StringComparison.Ordinal))).Select(p => p.Key));
    }
}
