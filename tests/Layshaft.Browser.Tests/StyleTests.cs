using Layshaft.Site.Building;
using Layshaft.Site.Look;
using Layshaft.Site.Templates;

namespace Layshaft.Browser.Tests;

/// <summary>The styles as a browser reads them.</summary>
[Collection(OneDemo.Name)]
public class StyleTests(PublishedDemo demo)
{
    [Theory]
    [InlineData(PageStyles.Wall)]
    [InlineData(PageStyles.Lap)]
    public async Task The_sheets_made_small_say_to_a_browser_what_they_say_as_written(string more)
    {
        var sheets = LookFiles.Sheets(TemplateFolders.BesideProgram());
        var shop = demo.Builder.Composition.Shop;
        var written = ShopColours.Stylesheet(shop) + string.Join('\n', new[] { PageStyles.Site, PageStyles.Charts, more }.Select(s => sheets[s]));
        var small = PageStyles.Of(shop, sheets).For(string.Empty, more, string.Empty).Text!.Markup;
        Assert.True(small.Length < 0.95 * written.Length);

        await using var context = await demo.Chromium.NewContextAsync();
        var page = await context.NewPageAsync();

        // A browser keeps the blank after a comma in var() as it was written.
        string[][] rules = await page.EvaluateAsync<string[][]>(
            "all => all.map(css => { const sheet = new CSSStyleSheet(); sheet.replaceSync(css); return [...sheet.cssRules].map(r => r.cssText.replaceAll(', ', ',')); })",
            new[] { written, small });
        Assert.True(rules[0].Length > 200);
        Assert.Equal(rules[0], rules[1]);
    }

    /// <summary>
    /// A text of reports is as wide in what stands in for the typeface as in the typeface. Where the system has neither of the
    /// faces that are meant, nothing stands in, and there is nothing to measure.
    /// </summary>
    [Fact]
    public async Task What_stands_in_for_the_typeface_is_as_wide()
    {
        await using var context = await demo.Chromium.NewContextAsync();
        var page = await context.NewPageAsync();
        await page.GotoAsync(demo.Address(demo.FullestReport));
        var ratios = await page.EvaluateAsync<double[]>(
            """
            async () => {
              const text = [...document.querySelectorAll('main p, main td, main li, main h2')].map(e => e.innerText).join(' ').replace(/\s+/g, ' ').slice(0, 6000).match(/.{1,80}/g);
              const width = async (family, weight) => {
                await document.fonts.load(`${weight} 20px '${family}'`);
                const box = document.body.appendChild(document.createElement('div'));
                const sum = text.map(t => { const line = box.appendChild(document.createElement('span')); line.textContent = t; return line; });
                box.className = 'width-of-' + weight;
                for (const line of sum) { line.style.cssText = `position:absolute;white-space:nowrap;font:${weight} 20px '${family}', monospace`; }
                const all = sum.reduce((s, l) => s + l.getBoundingClientRect().width, 0);
                box.remove();
                return all;
              };
              const ratios = [];
              for (const family of ['Layshaft Arial', 'Layshaft Roboto']) {
                for (const weight of [400, 650]) {
                  const there = await document.fonts.load(`${weight} 20px '${family}'`).then(f => f.length > 0 && f.every(x => x.status === 'loaded'), () => false);
                  if (there) ratios.push(await width(family, weight) / await width('Layshaft Text', weight));
                }
              }
              return ratios;
            }
            """);
        Assert.All(ratios, r => Assert.Equal(1, r, 0.01));
    }
}
