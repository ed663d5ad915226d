using Layshaft.Site.Sending;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>A one-file report opens whole on a phone with no network.</summary>
[Collection(OneDemo.Name)]
public class OneFileTests(PublishedDemo demo)
{
    [Fact]
    public async Task Each_opens_with_no_network_no_error_and_every_picture()
    {
        var wrong = new List<string>();
        var folder = Directory.CreateTempSubdirectory("layshaft-onefile-");
        await using var context = await demo.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, Offline = true });
        try
        {
            // The estimate, and the report with the most pictures.
            var due = demo.Builder.Composition.Book.Jobs.Where(Handover.IsDue).ToArray();
            var finished = due.Where(j => j.Finished is not null).OrderBy(j => j.Photos.Count).ToArray();
            Assert.NotEmpty(finished[^1].Photos);
            foreach (var job in due.Where(j => j.Finished is null).Append(finished[^1]))
            {
                var handover = new Handover(demo.Builder, job);
                var report = handover.Report();
                Assert.Empty(report.Missing);
                var path = Path.Combine(folder.FullName, handover.ReportName);
                await File.WriteAllBytesAsync(path, report.Content!.Value.ToArray());
                wrong.AddRange((await Look(context, path)).Select(w => $"{handover.ReportName}: {w}"));
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static async Task<IReadOnlyList<string>> Look(IBrowserContext context, string path)
    {
        var wrong = new List<string>();
        var page = await context.NewPageAsync();
        page.Console += (_, m) => Note(m.Type is "error" or "warning", $"console: {m.Text}");
        page.PageError += (_, e) => Note(true, $"error: {e}");
        page.RequestFailed += (_, r) => Note(true, $"failed: {Short(r.Url)} {r.Failure}");
        var asked = 0;
        page.Request += (_, r) => Note(!r.Url.StartsWith("data:", StringComparison.Ordinal) && ++asked > 1, $"asked for {Short(r.Url)}");
        await page.GotoAsync(new Uri(path).AbsoluteUri);
        wrong.AddRange(await page.EvaluateAsync<string[]>(
            """
            async () => {
              const found = [];
              document.querySelectorAll('details').forEach(d => d.open = true);
              for (const image of document.images) {
                await image.decode().catch(() => {});
                if (!(image.naturalWidth > 0)) found.push('no picture: ' + image.alt);
              }
              await document.fonts.ready;
              if (![...document.fonts].some(f => f.family.includes('Layshaft Text') && f.status === 'loaded')) found.push('the typeface is not loaded');
              if (getComputedStyle(document.querySelector('.sheet')).maxWidth === 'none') found.push('the stylesheet does not apply');
              if (document.documentElement.scrollWidth > document.documentElement.clientWidth) found.push('wider than the phone');
              return found;
            }
            """));
        await page.CloseAsync();
        return wrong;

        void Note(bool bad, string what)
        {
            if (bad)
            {
                wrong.Add(what);
            }
        }
    }

    private static string Short(string url) => url.Length > 80 ? url[..80] : url;
}
