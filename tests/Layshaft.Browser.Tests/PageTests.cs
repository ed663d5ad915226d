using System.Collections.Concurrent;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

[Collection(OneDemo.Name)]
public class PageTests(PublishedDemo demo)
{
    // 1280 px at 200 % zoom is 640 px wide, at 400 % 320 px (WCAG 2.2, success criteria 1.4.4 and 1.4.10).
    private static readonly int[] s_widths = [320, 390, 640, 1280];

    private static readonly string[] s_tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

    // The rules that look at colours: what else they find cannot change between light and dark.
    private static readonly string[] s_colourRules = ["color-contrast", "link-in-text-block"];
    private static readonly Dictionary<string, RuleOptions> s_withoutColours = s_colourRules.ToDictionary(r => r, _ => new RuleOptions { Enabled = false });

    [Fact]
    public void The_demo_has_a_page_of_each_kind()
    {
        Assert.Contains("shop/index.html", demo.Pages);
        Assert.True(demo.Reports.Count >= 9);
        Assert.Contains(demo.Pages, p => p.StartsWith("reference/", StringComparison.Ordinal));
        Assert.Contains(demo.Pages, p => p.StartsWith("customers/", StringComparison.Ordinal) && p.Count(c => c == '/') == 2);
        Assert.True(demo.OneOfEachKind.Count >= 12);
    }

    [Fact]
    public async Task Every_page_loads_without_an_error_or_a_request_outside_and_nothing_overflows_from_phone_to_desk_and_zoomed()
    {
        var wrong = await OnPages(demo.Pages, async (path, page, note) =>
        {
            page.Console += (_, m) => Note(m.Type is "error" or "warning", $"console: {m.Text}");
            page.PageError += (_, e) => Note(true, $"error: {e}");
            page.RequestFailed += (_, r) => Note(true, $"failed: {r.Url} {r.Failure}");
            page.Request += (_, r) => Note(!r.Url.StartsWith("file://", StringComparison.Ordinal) && !r.Url.StartsWith("data:", StringComparison.Ordinal), $"outside: {r.Url}");
            await page.GotoAsync(demo.Address(path));
            await Unfold(page);
            foreach (var width in s_widths)
            {
                await page.SetViewportSizeAsync(width, 900);
                var over = await page.EvaluateAsync<string[]>(
                    """
                    () => {
                      const wide = document.documentElement.clientWidth;
                      return document.documentElement.scrollWidth <= wide ? [] : [...document.querySelectorAll('body *')]
                        .filter(e => e.getBoundingClientRect().right > wide + 1 && !e.closest('.table-wrap'))
                        .slice(0, 4).map(e => e.tagName + '.' + e.getAttribute('class') + ' ' + Math.round(e.getBoundingClientRect().right));
                    }
                    """);
                Note(over.Length > 0, $"wider than a window of {width} px: {string.Join(", ", over)}");
            }

            var unsized = await page.EvaluateAsync<string[]>("() => [...document.images].filter(i => !(i.getAttribute('width') > 0 && i.getAttribute('height') > 0)).map(i => i.src)");
            Note(unsized.Length > 0, $"pictures without width and height: {string.Join(", ", unsized)}");
            foreach (var broken in BrokenLinks(await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('a[href], svg a')].map(a => a.href.baseVal ? new URL(a.href.baseVal, document.baseURI).href : a.href)")))
            {
                Note(true, broken);
            }

            void Note(bool bad, string what)
            {
                if (bad)
                {
                    note(what);
                }
            }
        });

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task A_report_is_at_most_eight_screens_of_a_phone()
    {
        const int Screen = 844;
        var wrong = await OnPages(demo.FinishedReports, async (path, page, note) =>
        {
            await page.SetViewportSizeAsync(390, Screen);
            await page.GotoAsync(demo.Address(path));
            var height = await page.EvaluateAsync<int>("() => document.fonts.ready.then(() => document.documentElement.scrollHeight)");
            if (height > 8 * Screen)
            {
                note($"{height} px");
            }
        });

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    // Colours do not depend on the width, and they take most of the time.
    [Theory]
    [InlineData(390, true)]
    [InlineData(1280, false)]
    public async Task No_kind_of_page_breaks_a_rule_of_accessibility_light_or_dark(int width, bool withColours)
    {
        var wrong = await OnPages(demo.OneOfEachKind, async (path, page, note) =>
        {
            await page.SetViewportSizeAsync(width, 900);
            await page.GotoAsync(demo.Address(path));
            await Unfold(page);
            await Run(page, new() { RunOnly = new() { Type = "tag", Values = [.. s_tags] }, Rules = withColours ? null : s_withoutColours }, w => note($"light: {w}"));
            if (withColours)
            {
                await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
                await Run(page, new() { RunOnly = new() { Type = "rule", Values = [.. s_colourRules] } }, w => note($"dark: {w}"));
            }
        });

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    // What is folded away is not looked at otherwise.
    private static Task<System.Text.Json.JsonElement?> Unfold(IPage page) => page.EvaluateAsync("() => document.querySelectorAll('details').forEach(d => d.open = true)");

    private static async Task Run(IPage page, AxeRunOptions options, Action<string> note)
    {
        options.ResultTypes = [ResultType.Violations];
        var found = await page.RunAxe(options);
        foreach (var violation in found.Violations)
        {
            note($"{violation.Id}: {violation.Help}: {string.Join(" | ", violation.Nodes.Take(2).Select(n => n.Html))}");
        }
    }

    // Two pages at a time, one tab each.
    private async Task<IReadOnlyList<string>> OnPages(IReadOnlyList<string> paths, Func<string, IPage, Action<string>, Task> look)
    {
        var wrong = new ConcurrentBag<string>();
        await using var context = await demo.Chromium.NewContextAsync(new() { ReducedMotion = ReducedMotion.Reduce, ColorScheme = ColorScheme.Light });
        await Parallel.ForEachAsync(paths, new ParallelOptions { MaxDegreeOfParallelism = 2 }, async (path, _) =>
        {
            var page = await context.NewPageAsync();
            await look(path, page, what => wrong.Add($"{path}: {what}"));
            await page.CloseAsync();
        });
        return [.. wrong.Order(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> BrokenLinks(IEnumerable<string> links)
    {
        foreach (var target in links.Where(l => l.StartsWith("file://", StringComparison.Ordinal)).Distinct().Select(l => new Uri(l)))
        {
            if (!File.Exists(target.LocalPath))
            {
                yield return $"leads nowhere: {target}";
            }
            else if (target.Fragment.Length > 1 && target.LocalPath.EndsWith(".html", StringComparison.Ordinal)
                && !File.ReadAllText(target.LocalPath).Contains($"id=\"{target.Fragment[1..]}\"", StringComparison.Ordinal))
            {
                yield return $"no {target.Fragment} in {target}";
            }
        }
    }
}
