using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

[Collection(OneDemo.Name)]
public class PageTests(PublishedDemo demo)
{
    public static TheoryData<int, ColorScheme> Views => new()
    {
        { 390, ColorScheme.Light },
        { 390, ColorScheme.Dark },
        { 1280, ColorScheme.Light },
        { 1280, ColorScheme.Dark },
    };

    [Fact]
    public void The_demo_has_a_page_of_each_kind()
    {
        Assert.Contains("shop/index.html", demo.Pages);
        Assert.True(demo.Reports.Count >= 9);
        Assert.Contains(demo.Pages, p => p.StartsWith("reference/", StringComparison.Ordinal));
        Assert.Contains(demo.Pages, p => p.StartsWith("customers/", StringComparison.Ordinal) && p.Count(c => c == '/') == 2);
    }

    [Theory]
    [MemberData(nameof(Views))]
    public async Task Every_page_loads_without_an_error_or_a_request_outside_and_nothing_overflows(int width, ColorScheme scheme)
    {
        var wrong = new List<string>();
        await using var context = await Context(width, scheme);
        foreach (var path in demo.Pages)
        {
            var page = await context.NewPageAsync();
            page.Console += (_, m) => Note(m.Type is "error" or "warning", $"console: {m.Text}");
            page.PageError += (_, e) => Note(true, $"error: {e}");
            page.RequestFailed += (_, r) => Note(true, $"failed: {r.Url} {r.Failure}");
            page.Request += (_, r) => Note(!r.Url.StartsWith("file://", StringComparison.Ordinal) && !r.Url.StartsWith("data:", StringComparison.Ordinal), $"outside: {r.Url}");
            await page.GotoAsync(demo.Address(path));
            var over = await page.EvaluateAsync<string[]>(
                """
                () => {
                  const wide = document.documentElement.clientWidth;
                  return document.documentElement.scrollWidth <= wide ? [] : [...document.querySelectorAll('body *')]
                    .filter(e => e.getBoundingClientRect().right > wide + 1 && !e.closest('.table-wrap'))
                    .slice(0, 4).map(e => e.tagName + '.' + e.getAttribute('class') + ' ' + Math.round(e.getBoundingClientRect().right));
                }
                """);
            Note(over.Length > 0, $"wider than the window: {string.Join(", ", over)}");
            await page.CloseAsync();

            void Note(bool bad, string what)
            {
                if (bad)
                {
                    wrong.Add($"{path}: {what}");
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Theory]
    [MemberData(nameof(Views))]
    public async Task No_kind_of_page_breaks_a_rule_of_accessibility(int width, ColorScheme scheme)
    {
        var wrong = new List<string>();
        await using var context = await Context(width, scheme);
        foreach (var path in demo.OneOfEachKind)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            var found = await page.RunAxe(new AxeRunOptions
            {
                RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
            });
            wrong.AddRange(found.Violations.Select(v => $"{path}: {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(2).Select(n => n.Html))}"));
            await page.CloseAsync();
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task Every_link_within_the_site_leads_somewhere()
    {
        var wrong = new List<string>();
        await using var context = await Context(1280, ColorScheme.Light);
        foreach (var path in demo.Pages)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            var links = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('a[href], svg a')].map(a => a.href.baseVal ? new URL(a.href.baseVal, document.baseURI).href : a.href)");
            foreach (var link in links.Where(l => l.StartsWith("file://", StringComparison.Ordinal)))
            {
                var target = new Uri(link);
                if (!File.Exists(target.LocalPath))
                {
                    wrong.Add($"{path}: {link}");
                }
                else if (target.Fragment.Length > 1 && target.LocalPath.EndsWith(".html", StringComparison.Ordinal)
                    && !File.ReadAllText(target.LocalPath).Contains($"id=\"{target.Fragment[1..]}\"", StringComparison.Ordinal))
                {
                    wrong.Add($"{path}: no {target.Fragment} in {link}");
                }
            }

            await page.CloseAsync();
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private Task<IBrowserContext> Context(int width, ColorScheme scheme) => demo.Chromium.NewContextAsync(new()
    {
        ViewportSize = new() { Width = width, Height = 900 },
        ColorScheme = scheme,
        ReducedMotion = ReducedMotion.Reduce,
    });
}
