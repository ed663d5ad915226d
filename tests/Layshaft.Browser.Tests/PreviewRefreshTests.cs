using Layshaft.Cli.Preview;
using Layshaft.Cli.Starting;
using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>An open page of the preview follows the book: its own policy lets its script in, and nothing else complains.</summary>
[Collection(OneDemo.Name)]
public class PreviewRefreshTests(PublishedDemo demo)
{
    [Fact]
    public async Task An_open_page_turns_into_the_changed_one_into_the_problems_and_back()
    {
        var home = Directory.CreateTempSubdirectory("layshaft-refresh-");
        var book = Path.Combine(home.FullName, "book");
        StarterBook.Write(book);
        var site = new PreviewSite(book, Path.Combine(home.FullName, "site"), keepsReaders: false);
        using var end = new CancellationTokenSource();
        using var watch = new BookWatch(book, poll: false);
        var server = await PreviewServer.Start(site, 0);
        var running = site.KeepUp(watch, end.Token);
        try
        {
            var page = await demo.Chromium.NewPageAsync();
            page.SetDefaultTimeout(120_000);
            var wrong = new List<string>();
            page.Console += (_, m) => wrong.Add(m.Text);
            page.PageError += (_, e) => wrong.Add(e);
            await page.GotoAsync(server.Address.AbsoluteUri);
            await page.Locator("a[href^='/customers/']").First.ClickAsync();
            var address = page.Url;

            Save(book, home.FullName, t => t.Replace("Nell Orchard", "Somebody Else", StringComparison.Ordinal));
            await page.GetByText("Somebody Else").First.WaitForAsync();
            Save(book, home.FullName, t => t + "telefone: 1\n");
            await page.GetByRole(AriaRole.Heading, new() { Name = "1 problem to fix" }).WaitForAsync();
            Assert.Contains("customers/nell.yaml(7,1)", await page.Locator(".place").InnerTextAsync(), StringComparison.Ordinal);
            Save(book, home.FullName, t => t.Replace("telefone: 1\n", string.Empty, StringComparison.Ordinal));
            await page.GetByText("Somebody Else").First.WaitForAsync();

            Assert.Equal(address, page.Url);
            Assert.Empty(wrong);
            await page.CloseAsync();
        }
        finally
        {
            await end.CancelAsync();
            await running;
            await server.DisposeAsync();
            home.Delete(recursive: true);
        }
    }

    private static void Save(string book, string home, Func<string, string> change)
    {
        var (file, draft) = (Path.Combine(book, "customers", "nell.yaml"), Path.Combine(home, "draft.yaml"));
        File.WriteAllText(draft, change(File.ReadAllText(file)));
        File.Move(draft, file, overwrite: true);
    }
}
