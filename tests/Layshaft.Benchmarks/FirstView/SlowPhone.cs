using System.Globalization;
using Microsoft.Playwright;

namespace Layshaft.Benchmarks.FirstView;

/// <summary>
/// Largest Contentful Paint of the reports of a published site on a simulated slow phone: 390 × 844 px, 1.6 Mbit/s down,
/// 150 ms there and back, processor four times slower, served from this machine with texts compressed.
/// </summary>
internal static class SlowPhone
{
    private const double BytesPerSecond = 1.6e6 / 8;

    public static async Task Run(string site, int times)
    {
        using var server = new LoopbackSite(site);
        using var playwright = await Playwright.CreateAsync().ConfigureAwait(false);
        await using var browser = await Browser.Tests.Browser.Launch(playwright).ConfigureAwait(false);
        foreach (var page in Directory.EnumerateFiles(Path.Combine(site, "customers"), "index.html", SearchOption.AllDirectories)
            .Where(p => Path.GetRelativePath(site, p).Count(c => c == Path.DirectorySeparatorChar) == 3).OrderByDescending(p => new FileInfo(p).Length).Take(3))
        {
            var path = Path.GetRelativePath(site, page).Replace('\\', '/');
            var seen = new List<Seen>();
            for (var i = 0; i < times; i++)
            {
                seen.Add(await Look(browser, server.Address + path).ConfigureAwait(false));
            }

            var ordered = seen.Select(s => s.Paint).Order().ToArray();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{Path.GetFileName(Path.GetDirectoryName(path))}: largest paint {ordered[ordered.Length / 2]:0} ms ({ordered[0]:0} to {ordered[^1]:0}, {times} times), a {seen[0].Element}; {seen.Max(s => s.Bytes) / 1000:0} kB before anybody scrolls"));
        }
    }

    private static async Task<Seen> Look(IBrowser browser, string address)
    {
        await using var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, DeviceScaleFactor = 2, IsMobile = true, HasTouch = true }).ConfigureAwait(false);
        var page = await context.NewPageAsync().ConfigureAwait(false);
        var devtools = await context.NewCDPSessionAsync(page).ConfigureAwait(false);
        double bytes = 0;
        devtools.Event("Network.loadingFinished").OnEvent += (_, e) => bytes += e!.Value.GetProperty("encodedDataLength").GetDouble();
        await devtools.SendAsync("Network.enable").ConfigureAwait(false);
        await devtools.SendAsync("Network.emulateNetworkConditions", new Dictionary<string, object>
        {
            ["offline"] = false,
            ["latency"] = 150,
            ["downloadThroughput"] = BytesPerSecond,
            ["uploadThroughput"] = BytesPerSecond / 2,
        }).ConfigureAwait(false);
        await devtools.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = 4 }).ConfigureAwait(false);
        await page.GotoAsync(address, new() { WaitUntil = WaitUntilState.NetworkIdle }).ConfigureAwait(false);
        var largest = await page.EvaluateAsync<Seen>(
            """
            () => new Promise(done => new PerformanceObserver(list => { const last = list.getEntries().at(-1); done({ paint: last.startTime, element: last.element?.localName ?? 'none' }); })
              .observe({ type: 'largest-contentful-paint', buffered: true }))
            """).ConfigureAwait(false);
        return largest with { Bytes = bytes };
    }

    private sealed record Seen
    {
        public double Paint { get; init; }

        public string Element { get; init; } = string.Empty;

        public double Bytes { get; init; }
    }
}
