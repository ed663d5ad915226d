using System.Globalization;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Layshaft.Browser.Tests;

[Collection(OneDemo.Name)]
public class PrintTests(PublishedDemo demo)
{
    private const int MostPages = 4;

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_finished_job_prints_on_four_pages_each_with_its_number_and_with_every_picture_whole(string paper)
    {
        var wrong = new List<string>();
        await using var context = await demo.Chromium.NewContextAsync();
        foreach (var path in demo.FinishedReports)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
            var pictures = await page.Locator("img").CountAsync();
            using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = paper, PreferCSSPageSize = false }));
            await page.CloseAsync();

            var job = path.Split('/')[^2];
            if (pdf.NumberOfPages > MostPages)
            {
                wrong.Add($"{path}: {pdf.NumberOfPages} pages");
            }

            // A picture that is cut by the end of a page is drawn on two.
            var drawn = pdf.GetPages().Sum(p => p.GetImages().Count());
            if (drawn != pictures)
            {
                wrong.Add($"{path}: {pictures} pictures are drawn {drawn} times");
            }

            foreach (var sheet in pdf.GetPages())
            {
                var text = string.Concat(sheet.Text.Where(c => !char.IsWhiteSpace(c)));
                var number = string.Create(CultureInfo.InvariantCulture, $"{sheet.Number}/{pdf.NumberOfPages}");
                if (!text.Contains($"job{job}·", StringComparison.Ordinal) || !text.Contains(number, StringComparison.Ordinal))
                {
                    wrong.Add($"{path}: page {sheet.Number} lacks the job's number or its own");
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_lap_sheet_prints_on_one_sheet_with_its_caution(string paper)
    {
        await using var context = await demo.Chromium.NewContextAsync();
        var sheets = demo.Pages.Where(p => p.EndsWith("/lap.html", StringComparison.Ordinal)).ToArray();
        Assert.True(sheets.Length > 4);

        // The longest ones: what fits there fits everywhere.
        foreach (var path in sheets.OrderByDescending(p => new FileInfo(Path.Combine(demo.Site, p)).Length).Take(3))
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
            using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = paper }));
            await page.CloseAsync();
            Assert.True(pdf.NumberOfPages == 1, $"{path}: {pdf.NumberOfPages} pages");
            Assert.Contains("Calculatedspeeds,notpermittedspeeds", Unspaced(pdf.GetPage(1).Text), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_bench_sheet_prints_on_two_sheets()
    {
        await using var context = await demo.Chromium.NewContextAsync();
        var paths = demo.Pages.Where(p => p.StartsWith("shop/sheet-", StringComparison.Ordinal)).ToArray();
        Assert.True(paths.Length > 2);
        foreach (var path in paths)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
            using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = "A4" }));
            await page.CloseAsync();
            Assert.True(pdf.NumberOfPages == 2, $"{path}: {pdf.NumberOfPages} pages");
        }
    }

    [Theory]
    [InlineData("A4", "shop/lives.html")]
    [InlineData("Letter", "shop/lives.html")]
    [InlineData("A4", "reference/terms.html")]
    [InlineData("Letter", "reference/terms.html")]
    public async Task No_printed_page_ends_with_a_heading_or_with_the_sentence_under_it(string paper, string path)
    {
        await using var context = await demo.Chromium.NewContextAsync();
        var page = await context.NewPageAsync();
        await page.GotoAsync(demo.Address(path));
        await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
        var leading = (await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('h2, h2 + .block > p:first-child')].map(e => e.textContent)")).Select(Unspaced).ToArray();
        using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = paper }));
        Assert.True(pdf.NumberOfPages > 1);
        var printed = pdf.GetPages().Select(p => Unspaced(p.Text).Replace($"{p.Number}/{pdf.NumberOfPages}", "", StringComparison.Ordinal)).ToArray();
        Assert.True(leading.Count(words => printed.Any(text => text.Contains(words, StringComparison.Ordinal))) > 2);
        Assert.All(printed, text => Assert.DoesNotContain(leading, words => text.EndsWith(words, StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_link_of_a_note_is_spelled_out_on_paper_and_a_long_one_wraps()
    {
        var address = "https://parts.example/" + string.Concat(Enumerable.Repeat("ring-and-hub/", 20));
        var note = Layshaft.Site.Notes.NoteRenderer.Render($"Ask [the maker]({address}) or [the desk](mailto:desk@parts.example?subject=Ring).", 2).Html.Markup;
        await using var context = await demo.Chromium.NewContextAsync();
        var page = await context.NewPageAsync();
        await page.GotoAsync(demo.Address(demo.FullestReport));
        await page.EvaluateAsync("note => document.querySelector('.verdict').insertAdjacentHTML('afterend', note)", note);
        using var pdf = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = "A4" }));
        var text = string.Concat(string.Concat(pdf.GetPages().Select(p => p.Text)).Where(c => !char.IsWhiteSpace(c)));
        Assert.Contains($"Askthemaker({address})orthedesk(desk@parts.example).", text, StringComparison.Ordinal);

        await page.SetViewportSizeAsync(700, 900);
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= document.documentElement.clientWidth"));

        // Neither the pages' own links nor those around pictures and in menus.
        Assert.Equal(2, await page.Locator(".spell-link").CountAsync());
        await page.EmulateMediaAsync(new() { Media = Media.Screen });
        Assert.Equal("none", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('.spell-link'), '::after').content"));
    }

    private static string Unspaced(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
