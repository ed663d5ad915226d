using System.Text;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;

namespace Layshaft.Browser.Tests;

/// <summary>German words are longer than English ones; on a phone they fit all the same.</summary>
[Collection(OneDemo.Name)]
public sealed class GermanPhoneTests(PublishedDemo demo) : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-german-");

    public void Dispose() => home.Delete(recursive: true);

    [Fact]
    public async Task German_answers_and_labels_fit_a_phone_of_390_pixels()
    {
        var pages = Pages();
        Assert.Contains(pages, p => File.ReadAllText(p).Contains("class=\"answer\"", StringComparison.Ordinal));
        var wrong = new List<string>();
        await using var context = await demo.Chromium.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 } });
        var page = await context.NewPageAsync();
        foreach (var path in pages)
        {
            await page.GotoAsync(new Uri(path).AbsoluteUri);
            var outside = await page.EvaluateAsync<string[]>(
                """
                () => [document.documentElement, ...document.querySelectorAll('nav a, .answer a, .options label, summary, .grade, .title-block dt, h1, h2, h3, legend')]
                  .filter(e => e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== 'inline' || e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('.table-wrap'))
                  .map(e => e.nodeName + ' ' + e.textContent.trim().slice(0, 60))
                """);
            wrong.AddRange(outside.Select(o => $"{Path.GetRelativePath(home.FullName, path)}: {o}"));
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    // The customers' and the shop's pages, and one of each public kind: choices of gears are the same labels many times over.
    private List<string> Pages()
    {
        var book = Path.Combine(home.FullName, "book");
        PublishedDemo.Copy(Path.Combine(AppContext.BaseDirectory, "demo-data"), book);
        File.AppendAllText(Path.Combine(book, "shop.yaml"), "\nlanguage: de\n");
        var site = SitePreparation.Of(BookReview.OfFolder(book), book);
        Assert.True(site.Builder is not null, string.Join('\n', site.Problems));
        var pages = new List<string>();
        foreach (var file in site.Builder.Files().Where(f => f.Path.EndsWith(".html", StringComparison.Ordinal))
            .GroupBy(f => f.Path.StartsWith("reference/", StringComparison.Ordinal) ? f.Path.Split('-')[0] : f.Path).Select(g => g.First()))
        {
            var path = Path.Combine(home.FullName, "site", file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, Encoding.UTF8.GetString(file.Make().Bytes!.Value.Span));
            pages.Add(path);
        }

        return pages;
    }
}
