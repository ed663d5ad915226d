using System.Runtime.CompilerServices;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>The uploaded trees work at a host, below any folder, with the headers that the guide to publishing gives.</summary>
[Collection(OneDemo.Name)]
public class HostedSiteTests(PublishedDemo demo)
{
    [Fact]
    public async Task Each_kind_of_page_for_upload_works_below_a_folder_of_a_host_with_the_guides_headers()
    {
        var headers = GuideHeaders();
        Assert.Contains(headers, h => h is { Name: "Content-Security-Policy" } && h.Value.Contains("frame-ancestors 'none'", StringComparison.Ordinal));
        Assert.Contains(headers, h => h is { Name: "X-Robots-Tag" } && h.Value.Contains("noindex", StringComparison.Ordinal));
        Assert.Contains(("Referrer-Policy", "no-referrer"), headers);
        Assert.Contains(headers, h => h.Name == "Cache-Control");

        var wrong = new List<string>();
        using var host = new HostedSite(demo.Site, headers);
        await using var context = await demo.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 } });
        foreach (var path in demo.OneOfEachKind.Where(p => !p.StartsWith("shop/", StringComparison.Ordinal)))
        {
            var page = await context.NewPageAsync();
            page.Console += (_, m) => Note(m.Type is "error" or "warning", $"console: {m.Text}");
            page.RequestFailed += (_, r) => Note(true, $"failed: {r.Url} {r.Failure}");
            page.Request += (_, r) => Note(!r.Url.StartsWith(host.Address, StringComparison.Ordinal) && !r.Url.StartsWith("data:", StringComparison.Ordinal), $"outside: {r.Url}");
            await page.GotoAsync(host.Address + path, new() { WaitUntil = WaitUntilState.Load });
            wrong.AddRange((await page.EvaluateAsync<string[]>(
                """
                async () => {
                  const found = [];
                  document.querySelectorAll('details').forEach(d => d.open = true);
                  for (const image of document.images) {
                    image.loading = 'eager';
                    await image.decode().catch(() => {});
                    if (!(image.naturalWidth > 0)) found.push('no picture: ' + image.currentSrc);
                  }
                  await document.fonts.ready;
                  if (document.querySelector('.sheet') && ![...document.fonts].some(f => f.family.includes('Layshaft Text') && f.status === 'loaded')) found.push('the typeface is not loaded');
                  return found;
                }
                """)).Select(w => $"{path}: {w}"));

            // The first link to another page of the site is followed, as a reader does it: the host sees no referrer.
            var next = page.Locator("nav a[href]:not([href^='#'])").First;
            if (await next.CountAsync() > 0)
            {
                await next.ClickAsync();
                await page.WaitForLoadStateAsync();
            }

            await page.CloseAsync();

            void Note(bool bad, string what)
            {
                if (bad)
                {
                    wrong.Add($"{path}: {what}");
                }
            }
        }

        // Chromium asks for a typeface that a style in a page names with the page as its referrer, whatever the page's policy and the
        // host's header say. It goes to the host that has just sent the page, and no further: `font-src 'self'`.
        wrong.AddRange(host.Wrong.Where(w => !w.Contains(".woff2 was asked for with the referrer " + host.Address, StringComparison.Ordinal)));
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    /// <summary>The headers as the guide writes them: the first block of code below its heading.</summary>
    private static IReadOnlyList<(string Name, string Value)> GuideHeaders([CallerFilePath] string here = "")
    {
        var guide = File.ReadAllText(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "docs", "publishing.md")).ReplaceLineEndings("\n");
        var block = guide[guide.IndexOf("## Set headers", StringComparison.Ordinal)..].Split("```")[1];
        return [.. block.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(l => l.Contains(": ", StringComparison.Ordinal)).Select(l => (l[..l.IndexOf(':', StringComparison.Ordinal)], l[(l.IndexOf(':', StringComparison.Ordinal) + 2)..]))];
    }
}
