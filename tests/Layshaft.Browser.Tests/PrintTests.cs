using System.Globalization;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Layshaft.Browser.Tests;

[Collection(OneDemo.Name)]
public class PrintTests(PublishedDemo demo)
{
    private const int MostPages = 6;

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_finished_job_prints_on_six_pages_each_with_its_number_and_with_every_picture_whole(string paper)
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
}
