using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>A table for the wall, read on a phone.</summary>
[Collection(OneDemo.Name)]
public class WallTests(PublishedDemo demo)
{
    [Fact]
    public async Task Pushed_sideways_it_keeps_the_names_of_its_rows_and_shades_the_edge_that_hides_more()
    {
        await using var context = await demo.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, BypassCSP = true });
        var page = await context.NewPageAsync();
        var walls = demo.Pages.Where(p => p.StartsWith("reference/wall-", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(walls);
        foreach (var path in walls)
        {
            await page.GotoAsync(demo.Address(path));
            var wrap = page.Locator(".table-wrap:has(> .wall)");
            Assert.True(await wrap.EvaluateAsync<bool>("e => e.scrollWidth > e.clientWidth"), path);
            var shade = await Edge(page, wrap);
            await wrap.EvaluateAsync("e => { e.scrollLeft = 1e5; }");

            // Each name where it was, no more than two fifths of the width, and nothing shows through it.
            Assert.Equal(0, await wrap.EvaluateAsync<int>(
                """
                e => [...e.querySelectorAll('tbody th, thead th[rowspan]')].filter(h => {
                  const [name, edge] = [h.getBoundingClientRect(), e.getBoundingClientRect()];
                  return Math.abs(name.left - edge.left) > 1 || name.width > .4 * edge.width || !getComputedStyle(h).backgroundColor.startsWith('rgb(');
                }).length
                """));
            Assert.NotEqual(shade, await Edge(page, wrap));
        }
    }

    // The right edge as it is painted, the figures in it left out.
    private static async Task<string> Edge(IPage page, ILocator wrap)
    {
        await page.AddStyleTagAsync(new() { Content = ".wall * { color: transparent !important; border-color: transparent !important; }" });
        var box = (await wrap.BoundingBoxAsync())!;
        var picture = await page.ScreenshotAsync(new() { FullPage = true, Clip = new() { X = box.X + box.Width - 4, Y = box.Y, Width = 4, Height = box.Height } });
        return Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(picture));
    }
}
