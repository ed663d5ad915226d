using System.Globalization;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Layshaft.Site.Tests.Seasons;

namespace Layshaft.Site.Tests.Tables;

/// <summary>The figures of every page, beside it for a program.</summary>
public sealed class DataFileTests
{
    private static readonly Lazy<IReadOnlyDictionary<string, string>> s_demo = new(DemoBook.Publish);
    private static readonly Lazy<IReadOnlyDictionary<string, string>> s_small = new(() => SmallBook.Publish());

    private static IEnumerable<(IReadOnlyDictionary<string, string> Site, string Page, IDocument Html)> Pages() =>
        from site in new[] { s_demo.Value, s_small.Value }
        from page in site.Keys.Where(p => p.EndsWith(".html", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
        select (site, page, (IDocument)new HtmlParser().ParseDocument(site[page]));

    [Fact]
    public void Every_page_with_a_table_links_to_its_figures_as_csv_and_json()
    {
        // A bench sheet is a form to fill in: its figures are those of the gearbox file.
        var pages = Pages().Where(p => p.Html.QuerySelector("table") is not null && !p.Page.StartsWith("shop/sheet-", StringComparison.Ordinal)).ToList();
        foreach (var kind in new[] { "customers/", "shop/", "reference/gearbox-", "reference/car-", "reference/wall-" })
        {
            Assert.Contains(pages, p => p.Page.StartsWith(kind, StringComparison.Ordinal));
        }

        foreach (var (site, page, html) in pages)
        {
            string[] links = [.. html.QuerySelectorAll("#data a").Select(a => a.GetAttribute("href")!)];
            Assert.All(links, l => Assert.False(Uri.TryCreate(l, UriKind.Absolute, out _) || l.StartsWith('/'), l));
            string[] files = [.. links.Select(l => new Uri(new Uri("http://site/" + page), l).AbsolutePath[1..])];
            Assert.All(files, f => Assert.True(site.ContainsKey(f), $"{page} links to {f}"));
            Assert.Single(files, f => f.EndsWith(".json", StringComparison.Ordinal));
            Assert.True(files.Any(f => f.EndsWith(".csv", StringComparison.Ordinal)), page);
        }
    }

    [Fact]
    public void Every_json_file_is_well_formed_and_gives_each_number_its_unit()
    {
        var numbers = 0;
        foreach (var (path, text) in Files(".json"))
        {
            using var json = JsonDocument.Parse(text);
            Assert.NotEqual(string.Empty, json.RootElement.GetProperty("title").GetString());
            foreach (var cell in Cells(json.RootElement))
            {
                Assert.True(cell.ValueKind is JsonValueKind.Object or JsonValueKind.String or JsonValueKind.Null, path);
                if (cell.ValueKind == JsonValueKind.Object)
                {
                    numbers++;
                    Assert.Equal(JsonValueKind.Number, cell.GetProperty("value").ValueKind);
                    Assert.NotEmpty(cell.GetProperty("unit").GetString()!);
                }
            }
        }

        Assert.True(numbers > 1000);
    }

    [Fact]
    public void Every_csv_file_reads_back_as_the_table_in_the_json_file_with_a_column_for_its_units()
    {
        var read = 0;
        foreach (var site in new[] { s_demo.Value, s_small.Value })
        {
            foreach (var (path, text) in site.Where(f => f.Key.EndsWith(".json", StringComparison.Ordinal)))
            {
                using var json = JsonDocument.Parse(text);
                foreach (var table in json.RootElement.GetProperty("tables").EnumerateArray())
                {
                    var csv = path[..^".json".Length] + "-" + table.GetProperty("id").GetString() + ".csv";
                    Same(table, SpreadsheetRows.Of(site[csv]));
                    read++;
                }
            }

            Assert.Equal(site.Keys.Count(k => k.EndsWith(".csv", StringComparison.Ordinal)), read);
            read = 0;
        }
    }

    [Theory]
    [InlineData("=HYPERLINK(\"http://x.example\")")]
    [InlineData("+1+1")]
    [InlineData("-1+cmd|' /C calc'!A0")]
    [InlineData("@SUM(1)")]
    public void Words_of_the_book_that_a_spreadsheet_would_run_are_written_as_words(string planted)
    {
        var quoted = "'" + planted.Replace("'", "''", StringComparison.Ordinal) + "'";
        var site = SmallBook.Publish(
            ("customers/second.yaml", $"name: {quoted}\n"),
            ("gearboxes/four.yaml", SmallBook.Gearbox.Replace("name: Dog ring 1 and 2", $"name: {quoted}", StringComparison.Ordinal)),
            ("jobs/2025/0003/job.yaml", SmallBook.Job("a", "2025-11-01", "60 h", $"complaint: {quoted}\nverdict: {quoted}\nfinished: 2025-11-10\n" + SmallBook.Rings(0.35, 0.36, 0.66, 0.60))));
        string[] fields = [.. site.Where(f => f.Key.EndsWith(".csv", StringComparison.Ordinal)).SelectMany(f => SpreadsheetRows.Of(f.Value)).SelectMany(r => r)];
        Assert.Contains("'" + planted, fields);
        Assert.All(fields.Where(f => f.Length > 0 && "=+-@\t\r".Contains(f[0], StringComparison.Ordinal)), f => Assert.True(decimal.TryParse(f, NumberStyles.Float, CultureInfo.InvariantCulture, out _), f));
    }

    [Fact]
    public void A_report_gives_every_choice_of_gears_where_its_page_shows_the_first()
    {
        var gearing = DemoBook.Composition().Assessment.Gearing.For(DemoBook.Review.Assessment!.Book.Jobs.Single(j => j.Number == "0628"))!;
        var path = s_demo.Value.Keys.Single(k => k.EndsWith("/0628/index-ranking.csv", StringComparison.Ordinal));
        var rows = SpreadsheetRows.Of(s_demo.Value[path]);
        Assert.Equal(gearing.Ranking.Candidates.Count, rows.Skip(1).Count(r => int.TryParse(r[0], out _)));
        var speed = rows[0].ToList().IndexOf("Top speed");
        Assert.Equal(gearing.Ranking.Candidates[0].TopSpeed.MilesPerHour, double.Parse(rows[1][speed], CultureInfo.InvariantCulture), 1e-5);
        Assert.Equal("mph", rows[1][speed + 1]);
    }

    // A number's unit is in the column after it; a column in which no number has a unit has none beside it.
    private static void Same(JsonElement table, IReadOnlyList<IReadOnlyList<string>> csv)
    {
        JsonElement[][] rows = [.. table.GetProperty("rows").EnumerateArray().Select(r => r.EnumerateArray().ToArray())];
        string[] heads = [.. table.GetProperty("columns").EnumerateArray().Select(c => c.GetString()!)];
        bool[] withUnit = [.. heads.Select((_, i) => rows.Any(r => r[i].ValueKind == JsonValueKind.Object && r[i].GetProperty("unit").GetString() != "1"))];
        Assert.Equal(heads.SelectMany((h, i) => withUnit[i] ? new[] { h, h + ", unit" } : [h]), csv[0]);
        Assert.Equal(rows.Length, csv.Count - 1);
        for (var row = 0; row < rows.Length; row++)
        {
            Assert.Equal(rows[row].SelectMany((c, i) => withUnit[i] ? new[] { ValueOf(c), UnitOf(c) } : [ValueOf(c)]), csv[row + 1].Select(Plain));
        }
    }

    private static string Plain(string field) => field is ['\'', '=' or '+' or '-' or '@', ..] ? field[1..] : field;

    private static string ValueOf(JsonElement cell) => cell.ValueKind switch
    {
        JsonValueKind.Object => cell.GetProperty("value").GetRawText(),
        JsonValueKind.String => cell.GetString()!,
        _ => string.Empty,
    };

    private static string UnitOf(JsonElement cell) => cell.ValueKind == JsonValueKind.Object && cell.GetProperty("unit").GetString() is { } unit && unit != "1" ? unit : string.Empty;

    private static IEnumerable<JsonElement> Cells(JsonElement root) => root.GetProperty("tables").EnumerateArray()
        .SelectMany(t => t.GetProperty("rows").EnumerateArray()).SelectMany(r => r.EnumerateArray());

    private static IEnumerable<KeyValuePair<string, string>> Files(string ending) =>
        s_demo.Value.Concat(s_small.Value).Where(f => f.Key.EndsWith(ending, StringComparison.Ordinal));
}
