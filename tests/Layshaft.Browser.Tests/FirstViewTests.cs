using System.Collections.Concurrent;
using System.IO.Compression;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>What the first look at a report costs on a phone with a poor signal, counted and not timed.</summary>
[Collection(OneDemo.Name)]
public class FirstViewTests(PublishedDemo demo)
{
    private const long MostBytes = 200_000;

    // What there is comes from the typeface taking the place of what stands in for it: a line here and there breaks otherwise. A
    // quarter of what Core Web Vitals call good; all of that for the shop's own pages, tables that one longer line moves far.
    private const double MostShiftWhileLoading = 0.025;
    private const double MostShiftOfOwnPages = 0.1;

    [Fact]
    public async Task The_first_view_of_every_report_weighs_less_than_200_kB_and_the_pictures_below_come_after_it()
    {
        var heavy = new List<string>();
        await using var context = await Phone();
        foreach (var path in demo.Reports)
        {
            var loaded = new ConcurrentBag<string>();
            var page = await context.NewPageAsync();
            page.RequestFinished += (_, r) => loaded.Add(r.Url);
            await page.GotoAsync(demo.Address(path), new() { WaitUntil = WaitUntilState.Load });
            var pictures = await page.EvaluateAsync<Picture[]>("() => [...document.images].map(i => ({ address: i.currentSrc, seen: i.getBoundingClientRect().top < innerHeight, lazy: i.loading === 'lazy' }))");
            await page.CloseAsync();

            // A browser fetches lazily loaded pictures a good way ahead of the reader, but nothing in view waits for them.
            var later = pictures.Where(p => !p.Seen).Select(p => p.Address).ToHashSet(StringComparer.Ordinal);
            var files = loaded.Where(u => u.StartsWith("file://", StringComparison.Ordinal) && !later.Contains(u)).Select(u => new Uri(u).LocalPath).Distinct().ToArray();
            var bytes = files.Sum(Sent);
            if (bytes >= MostBytes || pictures.Any(p => !p.Seen && !p.Lazy))
            {
                heavy.Add($"{path}: {bytes} bytes: {string.Join(", ", files.Select(f => $"{Path.GetFileName(f)} {Sent(f)}"))}; not lazy: {string.Join(", ", pictures.Where(p => !p.Seen && !p.Lazy).Select(p => p.Address))}");
            }
        }

        Assert.True(heavy.Count == 0, string.Join('\n', heavy));
    }

    [Fact]
    public async Task Nothing_moves_while_a_page_is_read_to_its_end_and_hardly_anything_while_it_loads()
    {
        var moved = new List<string>();
        await using var context = await Phone();
        foreach (var path in demo.OneOfEachKind)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            var seen = await page.EvaluateAsync<Reading>(
                """
                async () => {
                  const frame = () => new Promise(requestAnimationFrame), shifts = [];
                  new PerformanceObserver(list => shifts.push(...list.getEntries())).observe({ type: 'layout-shift', buffered: true });
                  await document.fonts.ready;
                  await frame();
                  await frame();
                  const loaded = performance.now();
                  for (let y = 0; y < document.documentElement.scrollHeight; y += 800) {
                    window.scrollTo(0, y);
                    await frame();
                  }
                  const shown = [...document.images].filter(i => i.checkVisibility()); // a folded one is not loaded
                  await Promise.all(shown.map(i => i.decode()));
                  await frame();
                  await frame();
                  const sum = some => some.reduce((all, s) => all + s.value, 0);
                  const reading = shifts.filter(s => s.startTime > loaded);
                  return {
                    loading: sum(shifts) - sum(reading),
                    later: sum(reading),
                    what: reading.flatMap(s => s.sources).map(s => s.node?.nodeName + ' ' + s.node?.textContent.trim().slice(0, 40)).join(', '),
                    blank: shown.filter(i => i.naturalWidth === 0).length,
                  };
                }
                """);
            if (seen.Later > 0 || seen.Loading >= (path.StartsWith("shop/", StringComparison.Ordinal) ? MostShiftOfOwnPages : MostShiftWhileLoading) || seen.Blank > 0)
            {
                moved.Add($"{path}: {seen}");
            }

            await page.CloseAsync();
        }

        Assert.True(moved.Count == 0, string.Join('\n', moved));
    }

    [Fact]
    public async Task The_largest_thing_of_a_reports_first_view_is_text_so_no_picture_holds_it_up()
    {
        await using var context = await Phone();
        var page = await context.NewPageAsync();
        await page.GotoAsync(demo.Address(demo.FullestReport));
        var largest = await page.EvaluateAsync<string>(
            """
            () => new Promise(done => new PerformanceObserver(list => done(list.getEntries().at(-1).element?.closest('figure, p, h1')?.localName ?? 'none'))
              .observe({ type: 'largest-contentful-paint', buffered: true }))
            """);
        Assert.Contains(largest, new[] { "p", "h1" });
    }

    // As a host sends it that compresses texts, as nearly all do; pictures and fonts are compressed already.
    private static long Sent(string file)
    {
        var bytes = File.ReadAllBytes(file);
        if (Path.GetExtension(file) is not (".html" or ".css" or ".js"))
        {
            return bytes.Length;
        }

        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            gzip.Write(bytes);
        }

        return packed.Length;
    }

    private sealed record Reading
    {
        public double Loading { get; init; }

        public double Later { get; init; }

        public string What { get; init; } = string.Empty;

        public int Blank { get; init; }
    }

    private sealed record Picture
    {
        public string Address { get; init; } = string.Empty;

        public bool Seen { get; init; }

        public bool Lazy { get; init; }
    }

    private Task<IBrowserContext> Phone() => demo.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, ReducedMotion = ReducedMotion.Reduce });
}
