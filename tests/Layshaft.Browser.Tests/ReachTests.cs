using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>Each kind of page in the hands of somebody who uses the keyboard, or whom motion makes ill.</summary>
[Collection(OneDemo.Name)]
public class ReachTests(PublishedDemo demo)
{
    // What the Tab key should stop at, in the order of the document; of a group of radio buttons the chosen one.
    private const string Stops =
        """
        () => {
          const all = [...document.querySelectorAll('a[href], summary, input, button, select, textarea, [tabindex]')]
            .filter(e => e.tabIndex >= 0 && e.checkVisibility({ visibilityProperty: true }) && (e.type !== 'radio' || e.checked));
          window.stops = all;
          return all.map((e, i) => i + ' ' + e.localName + ' ' + (e.getAttribute('aria-label') ?? e.textContent ?? '').trim().slice(0, 30));
        }
        """;

    private const string Focused =
        """
        () => {
          const e = document.activeElement, style = getComputedStyle(e), box = e.getBoundingClientRect();
          const ring = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2 || style.outlineStyle === 'auto';
          const inView = box.bottom > 0 && box.top < innerHeight && box.width > 0 && box.height > 0;
          return { stop: window.stops.indexOf(e), what: e.localName + ' ' + (e.textContent ?? '').trim().slice(0, 30), ring, inView };
        }
        """;

    [Fact]
    public async Task Every_interactive_thing_is_reached_by_Tab_in_order_with_a_visible_focus()
    {
        var wrong = new List<string>();
        await using var context = await demo.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 }, ReducedMotion = ReducedMotion.Reduce });
        foreach (var path in demo.OneOfEachKind)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            var stops = await page.EvaluateAsync<string[]>(Stops);
            for (var i = 0; i < stops.Length; i++)
            {
                await page.Keyboard.PressAsync("Tab");
                var now = await page.EvaluateAsync<FocusedThing>(Focused);
                if (now.Stop != i || !now.Ring || !now.InView)
                {
                    wrong.Add($"{path}: expected {stops[i]}; Tab led to {now.Stop} {now.What}{(now.Ring ? "" : ", no visible focus")}{(now.InView ? "" : ", out of view")}");
                    break;
                }
            }

            await page.CloseAsync();
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task The_first_Tab_shows_a_way_past_the_head_of_the_page()
    {
        await using var context = await demo.Chromium.NewContextAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        var page = await context.NewPageAsync();
        await page.GotoAsync(demo.Address(demo.FullestReport));
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        Assert.EndsWith("#main", page.Url, StringComparison.Ordinal);
        await page.Keyboard.PressAsync("Tab");
        Assert.True(await page.EvaluateAsync<bool>("() => document.querySelector('main').contains(document.activeElement)"));
    }

    [Fact]
    public async Task Nothing_moves_by_itself_where_less_motion_is_asked_for()
    {
        var moving = new List<string>();
        await using var context = await demo.Chromium.NewContextAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        foreach (var path in demo.OneOfEachKind)
        {
            var page = await context.NewPageAsync();
            await page.GotoAsync(demo.Address(path));
            moving.AddRange((await page.EvaluateAsync<string[]>(
                """
                () => [document.documentElement, ...document.body.querySelectorAll('*')].filter(e => {
                  const s = getComputedStyle(e);
                  return s.animationName !== 'none' || s.transitionDuration.split(',').some(d => parseFloat(d) > 0) || s.scrollBehavior === 'smooth';
                }).map(e => e.localName + '.' + e.getAttribute('class')).concat(document.getAnimations().map(a => 'an animation'))
                """)).Take(3).Select(m => $"{path}: {m}"));
            await page.CloseAsync();
        }

        Assert.True(moving.Count == 0, string.Join('\n', moving));
    }

    private sealed record FocusedThing
    {
        public int Stop { get; init; }

        public string What { get; init; } = string.Empty;

        public bool Ring { get; init; }

        public bool InView { get; init; }
    }
}
