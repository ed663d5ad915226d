using System.Globalization;
using System.Text.Json;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.History;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>Histories, the shop's pages, and the files beside them.</summary>
public sealed class SheetTests
{
    [Fact]
    public void The_same_book_gives_the_same_bytes_in_any_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var plain = SmallBook.Publish();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(plain, SmallBook.Publish());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_page_makes_exactly_the_tables_that_it_lists()
    {
        var composition = SmallBook.Compose(SmallBook.Review());
        foreach (var page in ShopPageList.All)
        {
            Assert.Equal(page.Tables, page.Compose(ShopContext.Of(composition)).Tables.Select(t => t.Id));
        }

        var view = OwnerView.Of(composition.Book, composition.Book.Units["a"])[1];
        Assert.Equal(HistoryComposer.Tables, HistoryComposer.Compose(composition, view).Tables.Select(t => t.Id));
    }

    [Fact]
    public void Of_very_many_lives_a_page_shows_the_newest_and_its_files_all()
    {
        var renewed = string.Join(", ", Enumerable.Range(0, ShopContext.MostRows + 20).Select(i => FormattableString.Invariant($"{{ part: seal, serial: S-{i} }}")));
        var shop = ShopContext.Of(SmallBook.Compose(SmallBook.Review(("jobs/2025/0003/job.yaml", SmallBook.Job("a", "2025-11-01", "60 h", $"complaint: x\nrenewed: [{renewed}]\n")))));
        var page = LivesPage.Compose(shop);
        var whole = page.Tables.Single(t => t.Id == "lives").Rows;
        var block = page.Sections.Select(s => s.Model).OfType<BlocksView>().SelectMany(s => s.Blocks).Single(b => b.Table?.Id == "lives");
        Assert.True(whole.Count > ShopContext.MostRows);
        Assert.Equal(whole.TakeLast(ShopContext.MostRows), block.Table!.Rows);
        Assert.Contains(FormattableString.Invariant($"{whole.Count}"), Assert.Single(block.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Bounds_of_a_life_are_rounded_outwards_in_the_table_as_in_the_sentence()
    {
        var page = LivesPage.Compose(ShopContext.Of(DemoBook.Composition()));
        var blocks = page.Sections.Select(s => s.Model).OfType<BlocksView>().SelectMany(s => s.Blocks).ToLookup(b => b.Heading);
        var bounded = page.Tables.Single(t => t.Id == "kinds").Rows.Where(r => r.Cells[^2].IsNumber && r.Cells[^1].IsNumber).ToList();
        Assert.NotEmpty(bounded);
        foreach (var row in bounded)
        {
            Assert.Contains($"confidence {row.Cells[^2].Text} to {row.Cells[^1].Text})", Assert.Single(blocks[row.Cells[0].Text]).Lines[0], StringComparison.Ordinal);
            Assert.True(decimal.Parse(row.Cells[^2].Text.Split('\u202F')[0], CultureInfo.InvariantCulture) <= row.Cells[^2].Number);
            Assert.True(decimal.Parse(row.Cells[^1].Text.Split('\u202F')[0], CultureInfo.InvariantCulture) >= row.Cells[^1].Number);
        }
    }

    [Fact]
    public void A_history_tells_jobs_trends_and_the_growing_pack()
    {
        var page = SmallBook.Publish()["customers/key-a-1/index.html"];
        Assert.Contains("href=\"0001/index.html\"", page, StringComparison.Ordinal);
        Assert.Contains("the shim pack has grown by 0.10\u202Fmm", page, StringComparison.Ordinal);
        Assert.Contains("Inspect within", page, StringComparison.Ordinal);
        Assert.Contains("Measured once", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bench_counts_days_from_the_newest_day_in_the_book()
    {
        var composition = SmallBook.Compose(SmallBook.Review());
        var bench = BenchPage.Compose(ShopContext.Of(composition)).Tables[0];
        Assert.Equal(["0004", "B-2", "Second Owner", "Estimate sent", "the customer's answer", "2025-12-01", "2", "0", null, "Print"], bench.Rows.Single().Cells.Select(c => c.Data));
        var unanswered = BenchPage.Compose(ShopContext.Of(composition)).Tables[1];
        Assert.Equal(["0004", "Estimate", "Second Owner", null, "2025-12-03", "2025-12-31", "28", "200"], unanswered.Rows.Single().Cells.Select(c => c.Data));
    }

    [Fact]
    public void A_declined_job_stays_on_the_bench_until_its_unit_is_collected_or_comes_in_again()
    {
        var declined = SmallBook.Files()["jobs/2025/0004/job.yaml"] + "go_ahead: { answer: no, on: 2025-12-05 }\n";
        var row = Assert.Single(Bench(("jobs/2025/0004/job.yaml", declined)));
        Assert.Equal(["0004", "B-2", "Second Owner", "Declined", "collection, unrepaired", "2025-12-01", "4", "0", null, "Print"], row.Cells.Select(c => c.Data));
        Assert.Empty(Bench(("jobs/2025/0004/job.yaml", declined + "collected: 2025-12-06\n")));
        var again = Bench(("jobs/2025/0004/job.yaml", declined), ("jobs/2026/0005/job.yaml", SmallBook.Job("b", "2026-02-01", "31 h", "complaint: Worse.\n")));
        Assert.Equal(["0005"], again.Select(r => r.Cells[0].Data));
        Assert.Equal("stripping and inspection", again[0].Cells[4].Data);
        var stores = StoresPage.Compose(ShopContext.Of(SmallBook.Compose(SmallBook.Review(("jobs/2025/0004/job.yaml", declined)))));
        Assert.Empty(stores.Tables[0].Rows);
    }

    [Fact]
    public void A_job_that_is_being_rebuilt_waits_for_the_parts_that_stock_lacks()
    {
        var agreed = SmallBook.Files()["jobs/2025/0004/job.yaml"] + "go_ahead: { answer: yes, on: 2025-12-04 }\n";
        Assert.Equal("parts to order: Dog ring 1 and 2", Bench(("jobs/2025/0004/job.yaml", agreed)).Single().Cells[4].Data);
        var stocked = SmallBook.Gearbox.Replace("stock: 0", "stock: 2", StringComparison.Ordinal);
        Assert.Equal("rebuild", Bench(("jobs/2025/0004/job.yaml", agreed), ("gearboxes/four.yaml", stocked)).Single().Cells[4].Data);
        Assert.Equal("a new hub", Bench(("jobs/2025/0004/job.yaml", agreed + "waits_for: a new hub\n")).Single().Cells[4].Data);
    }

    [Fact]
    public void With_the_months_of_the_season_named_the_pages_count_by_season()
    {
        var site = SmallBook.Publish(("shop.yaml", SmallBook.Shop + "\nseason: October to March\n"));
        Assert.Contains(">2025/26<", site["shop/seasons.html"], StringComparison.Ordinal);
        Assert.Contains("2025/26", site["customers/key-a-1/index.html"], StringComparison.Ordinal);
        Assert.Contains("busiest season", site["customers/key-a-1/index.html"], StringComparison.Ordinal);
        var seasons = SeasonsPage.Compose(ShopContext.Of(SmallBook.Compose(SmallBook.Review(("shop.yaml", SmallBook.Shop + "\nseason: October to March\n"))))).Tables[0];
        Assert.Equal([("2025/26", "2"), ("2024/25", "1"), ("2023/24", "1")], seasons.Rows.Select(r => (r.Cells[0].Data, r.Cells[1].Data)));
    }

    [Theory]
    [InlineData("0.20 mm", "0.08 mm", "unchanged")]
    [InlineData("0.22 mm", "0.07 mm", "no sign of wear")]
    [InlineData("0.30 mm", "0.07 mm", "the shim pack has grown by")]
    public void A_pack_has_grown_only_by_more_than_measuring_may_make(string shim, string built, string said)
    {
        var job = SmallBook.Files()["jobs/2024/0002/job.yaml"].Replace("0.30 mm], built: [0.07 mm]", $"{shim}], built: [{built}]", StringComparison.Ordinal);
        Assert.Contains(said, SmallBook.Publish(("jobs/2024/0002/job.yaml", job))["customers/key-a-1/index.html"], StringComparison.Ordinal);
    }

    // Floats of 0.070 and 0.066 mm and shims of 0.02 mm more: the change, 0.016 mm, and its uncertainty, 0.0154 mm, are both 0.02 mm as written.
    [Fact]
    public void A_change_of_a_pack_is_not_compared_with_an_uncertainty_that_is_written_alike()
    {
        var shop = SmallBook.Shop.Replace("resolution: 0.01 mm, error_limit: 0.01 mm, repeatability: 0.01 mm", "resolution: 0.001 mm, error_limit: 0.0096 mm", StringComparison.Ordinal);
        var job = SmallBook.Files()["jobs/2024/0002/job.yaml"].Replace("0.30 mm], built: [0.07 mm]", "0.22 mm], built: [0.066 mm]", StringComparison.Ordinal);

        var page = SmallBook.Publish(("jobs/2024/0002/job.yaml", job), ("shop.yaml", shop))["customers/key-a-1/index.html"].Replace('\u202F', ' ');

        Assert.Contains("have changed by 0.02 mm, only just more than the measurement uncertainty.", page, StringComparison.Ordinal);
        Assert.DoesNotContain("the measurement uncertainty is 0.02 mm", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Do nothing for now</a> (we will tell you the charge for the inspection)")]
    [InlineData("if_refused: 0, ", "Do nothing for now</a> (no charge)")]
    [InlineData("if_refused: 120, ", "Do nothing for now</a> (€120.00)")]
    public void The_answer_no_says_what_it_costs(string field, string said)
    {
        var job = SmallBook.Files()["jobs/2025/0004/job.yaml"].Replace("sent: 2025-12-03, ", "sent: 2025-12-03, " + field, StringComparison.Ordinal);
        var page = Assert.Single(SmallBook.Publish(("jobs/2025/0004/job.yaml", job)), f => f.Key.EndsWith("/0004/index.html", StringComparison.Ordinal)).Value;

        Assert.Contains(said, page, StringComparison.Ordinal);
    }

    [Fact]
    public void With_too_few_failures_a_life_is_called_too_few()
    {
        var table = LivesPage.Compose(ShopContext.Of(DemoBook.Composition())).Tables.Single(t => t.Id == "gears");
        var b10 = table.Rows[0].Cells.Count - 3;
        var few = table.Rows.Where(r => r.Cells[2].Number < Layshaft.Engineering.Life.Weibull.LeastFailures).ToList();

        Assert.NotEmpty(few);
        Assert.All(few, r => Assert.Equal(("too few", null), (r.Cells[b10].Text, r.Cells[b10].Data)));
    }

    [Fact]
    public void The_page_of_part_lives_says_which_rule_decided_how_often()
    {
        var page = SmallBook.Publish()["shop/lives.html"];
        Assert.Contains("2 renewals in the book. Classified by stated reason: 0; by grade: 1; by type of part: 1; unclassified, counted as failures: 0.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_is_what_open_jobs_need_beyond_the_stock()
    {
        var order = StoresPage.Compose(ShopContext.Of(SmallBook.Compose(SmallBook.Review()))).Tables[0];
        Assert.Equal(["Dog ring 1 and 2", "Tester Four", "0", "2", "0", "2", "77.31", "0004"], order.Rows.Single().Cells.Select(c => c.Data));
    }

    private static IReadOnlyList<Row> Bench(params (string Path, string Text)[] changes) =>
        BenchPage.Compose(ShopContext.Of(SmallBook.Compose(SmallBook.Review(changes)))).Tables[0].Rows;

    [Fact]
    public void The_json_beside_a_page_gives_each_number_with_its_unit()
    {
        using var json = JsonDocument.Parse(SmallBook.Publish()["customers/key-a-1/index.json"]);
        var readings = json.RootElement.GetProperty("tables").EnumerateArray().Single(t => t.GetProperty("id").GetString() == "readings");
        var first = readings.GetProperty("rows").EnumerateArray().Single(r => r[1].GetString() == "Radius on first");
        Assert.Equal("h", first[4].GetProperty("unit").GetString());
        Assert.Equal(20, first[4].GetProperty("value").GetDouble());
        Assert.Equal("mm", first[5].GetProperty("unit").GetString());
        Assert.Equal(0.35, first[5].GetProperty("value").GetDouble());
    }

    [Fact]
    public void A_csv_file_keeps_numbers_bare_and_words_harmless()
    {
        var composition = SmallBook.Compose(SmallBook.Review());
        var table = TableView.Of(
            "t",
            "caption",
            ["What", "How much"],
            [
                [Cell.Of("=1+1"), Cell.Of(composition.Figures.Length(UnitsNet.Length.FromMillimeters(-0.5), 2), -0.5)],
                [Cell.Of("a, \"b\""), Cell.Empty],
            ]);
        using var csv = new MemoryStream();
        CsvText.Write(csv, table, head => head + " unit");
        var text = System.Text.Encoding.UTF8.GetString(csv.ToArray());
        Assert.Equal("\uFEFFWhat,How much,How much unit\r\n\"'=1+1\",-0.5,mm\r\n\"a, \"\"b\"\"\",,\r\n", text);
    }

    [Fact]
    public void Advice_is_printed_where_its_rule_holds_and_nowhere_else()
    {
        var site = SmallBook.Publish(("jobs/2025/0003/job.yaml", SmallBook.Job("a", "2025-11-01", "60 h", "complaint: x\nverdict: y\nfinished: 2025-11-10\n" + SmallBook.Rings(0.35, 0.36, 0.40, 0.38))));
        Assert.Contains("ADVICE-NONE", site["customers/key-a-1/0003/index.html"].Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("ADVICE", site["customers/key-a-1/0002/index.html"], StringComparison.Ordinal);
        Assert.DoesNotContain("gives no reason to shift differently", site["customers/key-a-1/0003/index.html"].Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
