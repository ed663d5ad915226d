using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Text;
using Layshaft.Cli.Commands;
using Layshaft.Cli.Preview;

namespace Layshaft.Cli.Tests;

public sealed class PreviewTests : IAsyncLifetime, IDisposable
{
    private static readonly TimeSpan LongEnough = TimeSpan.FromMinutes(2);

    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-preview-test-");
    private readonly CancellationTokenSource end = new();
    private readonly List<Task> running = [];
    private string lastVersion = string.Empty;
    private readonly List<IAsyncDisposable> servers = [];

    private string Book => Path.Combine(home.FullName, "book");

    private string Customer => Path.Combine(Book, "customers", "first-customer.yaml");

    public Task InitializeAsync()
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "Small"), "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Book, Path.GetRelativePath(Path.Combine(AppContext.BaseDirectory, "Small"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        return Task.CompletedTask;
    }

    public async Task DisposeAsync()
    {
        await end.CancelAsync();
        await Task.WhenAll(running);
        foreach (var server in servers)
        {
            await server.DisposeAsync();
        }

        home.Delete(recursive: true);
    }

    public void Dispose() => end.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_saved_change_reaches_the_open_page_and_a_mistake_shows_until_it_is_fixed(bool poll)
    {
        var (site, client) = await Begin(poll);
        using var events = new StreamReader(await client.GetStreamAsync(PreviewFiles.Events));
        await Until(events, site, s => !s.IsStopped);
        var history = "/" + Path.GetRelativePath(site.Folder, Assert.Single(Directory.GetFiles(Path.Combine(site.Folder, "customers"), "index.html", new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 1 }), f => Path.GetFileName(Path.GetDirectoryName(f))!.Length > 20)).Replace('\\', '/');
        Assert.Contains("First Customer", await client.GetStringAsync(history), StringComparison.Ordinal);

        Save("name: Somebody Else\n");
        await Until(events, site, s => !s.IsStopped);
        Assert.Contains("Somebody Else", await client.GetStringAsync(history), StringComparison.Ordinal);

        Save("name: Somebody Else\ntelefone: <b>1\n");
        await Until(events, site, s => s.IsStopped);
        foreach (var address in new[] { "/", history })
        {
            var page = await client.GetStringAsync(address);
            Assert.Contains("customers/first-customer.yaml(2,1)", page, StringComparison.Ordinal);
            Assert.Contains("Did you mean &#39;telephone&#39;?", page, StringComparison.Ordinal);
            Assert.Contains("<pre>telefone: &lt;b&gt;1\n^</pre>", page, StringComparison.Ordinal);
            Assert.Contains(PreviewFiles.Script, page, StringComparison.Ordinal);
        }

        Save("name: A Third\n");
        await Until(events, site, s => !s.IsStopped);
        Assert.Contains("A Third", await client.GetStringAsync(history), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_start_page_leads_to_all_three_parts_and_only_the_preview_has_a_script()
    {
        var (site, client) = await Begin(poll: false);
        using var events = new StreamReader(await client.GetStreamAsync(PreviewFiles.Events));
        await Until(events, site, s => !s.IsStopped);

        var start = await client.GetStringAsync("/");
        foreach (var part in new[] { "shop/index.html", "reference/index.html", "customers/" })
        {
            Assert.Contains($"<a href=\"/{part}", start, StringComparison.Ordinal);
        }

        var page = await client.GetAsync("/shop/index.html");
        var html = await page.Content.ReadAsStringAsync();
        Assert.Contains($"<script src=\"{PreviewFiles.Script}?version={site.State.Version}\" defer></script></head>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", await File.ReadAllTextAsync(Path.Combine(site.Folder, "shop", "index.html")), StringComparison.Ordinal);
        Assert.DoesNotContain("http-equiv", html, StringComparison.Ordinal);
        var policy = Assert.Single(page.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'; ", policy, StringComparison.Ordinal);
        Assert.Contains("; script-src 'self'; connect-src 'self'; frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal(["nosniff"], page.Headers.GetValues("X-Content-Type-Options"));
        Assert.Equal(["no-referrer"], page.Headers.GetValues("Referrer-Policy"));
        Assert.True(page.Headers.CacheControl!.NoStore);
        Assert.Contains("style-src 'self' 'sha256-", policy, StringComparison.Ordinal);
        Assert.Equal("font/woff2", (await client.GetAsync("/shop/look/fonts/libre-franklin-latin-wght-normal.woff2")).Content.Headers.ContentType!.MediaType);
    }

    [Theory]
    [InlineData("GET /..%2fbook%2fshop.yaml HTTP/1.1", null, 404)]
    [InlineData("GET /..%5cbook%5cshop.yaml HTTP/1.1", null, 404)]
    [InlineData("GET /shop/../../book/shop.yaml HTTP/1.1", null, 404)]
    [InlineData("GET /%2e%2e/book/shop.yaml HTTP/1.1", null, 404)]
    [InlineData("GET /shop/%2e%2e/%2e%2e/book/shop.yaml HTTP/1.1", null, 404)]
    [InlineData("GET //book/shop.yaml HTTP/1.1", null, 404)]
    [InlineData("GET /book/.layshaft-secret HTTP/1.1", null, 404)]
    [InlineData("GET /shop HTTP/1.1", null, 404)]
    [InlineData("GET / HTTP/1.1", "rebound.example", 403)]
    [InlineData("GET / HTTP/1.1", "127.0.0.1:1", 403)]
    [InlineData("GET / HTTP/1.1", "127.0.0.1.rebound.example", 403)]
    [InlineData("POST / HTTP/1.1", null, 405)]
    [InlineData("DELETE /shop/index.html HTTP/1.1", null, 405)]
    [InlineData("GET / HTTP/1.1\r\nSec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: no-cors", null, 403)]
    [InlineData("GET / HTTP/1.1\r\nSec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: navigate", null, 200)]
    [InlineData("HEAD / HTTP/1.1", "localhost", 200)]
    public async Task What_leads_outside_or_comes_from_elsewhere_is_refused(string request, string? host, int code)
    {
        var (_, client) = await Begin(poll: false);
        var port = client.BaseAddress!.Port;

        var answer = await Raw(port, $"{request}\r\nHost: {(host is null ? $"127.0.0.1:{port}" : host == "localhost" ? $"localhost:{port}" : host)}\r\nContent-Length: 0\r\nConnection: close\r\n\r\n");

        Assert.StartsWith($"HTTP/1.1 {code} ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("bench@example.com", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_in_the_site_is_not_followed()
    {
        if (OperatingSystem.IsWindows())
        {
            return; // links ask for rights there
        }

        var site = Directory.CreateDirectory(Path.Combine(home.FullName, "linked", "shop")).Parent!.FullName;
        File.WriteAllText(Path.Combine(site, "shop", "index.html"), "ours");
        File.CreateSymbolicLink(Path.Combine(site, "shop", "secret.html"), Path.Combine(Book, "shop.yaml"));
        Directory.CreateSymbolicLink(Path.Combine(site, "book"), Book);

        Assert.NotNull(PreviewFiles.Locate(site, "/shop/index.html"));
        Assert.Null(PreviewFiles.Locate(site, "/shop/secret.html"));
        Assert.Null(PreviewFiles.Locate(site, "/book/shop.yaml"));
    }

    [Fact]
    public async Task Two_previews_at_once_have_a_port_and_a_folder_each()
    {
        using var said = new StringWriter();
        var both = TextWriter.Synchronized(said);
        var runs = Enumerable.Range(0, 2).Select(_ => Task.Run(() => PreviewCommand.Create(both, both).Parse(Book).InvokeAsync(cancellationToken: end.Token))).ToArray();
        while (said.ToString().Split("up to date").Length < 3 && !runs.Any(r => r.IsCompleted))
        {
            await Task.Delay(50);
        }

        await end.CancelAsync();
        Assert.All(await Task.WhenAll(runs), code => Assert.Equal(0, code));
        Assert.Equal(2, System.Text.RegularExpressions.Regex.Matches(said.ToString(), "Open (http://\\S+)").Select(m => m.Groups[1].Value).Distinct().Count());
    }

    [Fact]
    public async Task It_listens_on_this_machine_only()
    {
        var (_, client) = await Begin(poll: false);

        Assert.Equal("127.0.0.1", client.BaseAddress!.Host);
        var listening = IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(l => l.Port == client.BaseAddress.Port).ToArray();
        Assert.NotEmpty(listening);
        Assert.All(listening, l => Assert.True(IPAddress.IsLoopback(l.Address), l.ToString()));
    }

    private async Task<(PreviewSite Site, HttpClient Client)> Begin(bool poll)
    {
        var site = new PreviewSite(Book, Path.Combine(home.FullName, "site"), keepsReaders: false);
        var watch = new BookWatch(Book, poll);
        var server = await PreviewServer.Start(site, 0);
        servers.Add(server);
        running.Add(Keep(site, watch));
        var client = new HttpClient { BaseAddress = server.Address, Timeout = LongEnough };
        return (site, client);
    }

    private async Task Keep(PreviewSite site, BookWatch watch)
    {
        using (watch)
        {
            await site.KeepUp(watch, end.Token);
        }
    }

    // In one step, so that no half-written file is ever published.
    private void Save(string text)
    {
        var draft = Path.Combine(home.FullName, "draft.yaml");
        File.WriteAllText(draft, text);
        File.Move(draft, Customer, overwrite: true);
    }

    // Reads the events until one tells of a state that is looked for.
    private async Task Until(StreamReader events, PreviewSite site, Func<PreviewState, bool> reached)
    {
        using var limit = new CancellationTokenSource(LongEnough);
        while (true)
        {
            var line = await events.ReadLineAsync(limit.Token) ?? throw new InvalidOperationException("The events ended.");
            var state = site.State;
            if (line == $"data: {state.Version}" && state.Version != lastVersion && reached(state))
            {
                lastVersion = state.Version;
                return;
            }
        }
    }

    private static async Task<string> Raw(int port, string request)
    {
        using var connection = new TcpClient();
        await connection.ConnectAsync(IPAddress.Loopback, port);
        var stream = connection.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request));
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return await reader.ReadToEndAsync();
    }
}
