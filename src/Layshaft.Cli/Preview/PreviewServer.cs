using System.Net;
using System.Text;
using Layshaft.Book.Reading;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Layshaft.Cli.Preview;

/// <summary>
/// Serves a site to this machine only: on the loopback address, to requests that name it (a page elsewhere whose name is
/// made to point here would name its own), reading only.
/// </summary>
internal sealed class PreviewServer : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly PreviewSite site;
    private readonly CancellationTokenSource stopping = new();

    private PreviewServer(PreviewSite site, int port)
    {
        this.site = site;
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Services.Configure<Microsoft.Extensions.Hosting.HostOptions>(o => o.ShutdownTimeout = TimeSpan.FromSeconds(2));
        app = builder.Build();
        app.Run(Answer);
    }

    /// <summary>Where it is: <c>http://127.0.0.1:8421/</c>.</summary>
    public Uri Address => new(app.Urls.Single());

    /// <summary>Starts to serve.</summary>
    /// <param name="site">What is served.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<PreviewServer> Start(PreviewSite site, int port)
    {
        var server = new PreviewServer(site, port);
        try
        {
            await server.app.StartAsync().ConfigureAwait(false);
            return server;
        }
        catch
        {
            await server.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }

    public async ValueTask DisposeAsync()
    {
        await stopping.CancelAsync().ConfigureAwait(false);
        await app.StopAsync().ConfigureAwait(false);
        await app.DisposeAsync().ConfigureAwait(false);
        stopping.Dispose();
    }

    private async Task Answer(HttpContext context)
    {
        var (request, response) = (context.Request, context.Response);
        Guard(response.Headers);
        if (!IsOurs(request.Host) || IsFromElsewhere(request))
        {
            await Send(response, StatusCodes.Status403Forbidden, "text/plain; charset=utf-8", "The preview is available only at its own address.\n").ConfigureAwait(false);
            return;
        }

        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            response.Headers.Allow = "GET, HEAD";
            await Send(response, StatusCodes.Status405MethodNotAllowed, "text/plain; charset=utf-8", "The preview is read-only.\n").ConfigureAwait(false);
            return;
        }

        var address = request.Path.Value ?? "/";
        await (address switch
        {
            PreviewFiles.Script => Send(response, StatusCodes.Status200OK, "text/javascript; charset=utf-8", PreviewFiles.ScriptText),
            PreviewFiles.Sheet => Send(response, StatusCodes.Status200OK, "text/css; charset=utf-8", PreviewFiles.SheetText),
            PreviewFiles.Events => Tell(context),
            "/" => Own(response, StatusCodes.Status200OK, site.State.IsStopped ? PreviewPages.Stopped(site) : PreviewPages.Start(site)),
            _ => File(response, address),
        }).ConfigureAwait(false);
    }

    private static void Guard(IHeaderDictionary headers)
    {
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["X-Robots-Tag"] = "noindex, nofollow";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
        headers.ContentSecurityPolicy = PreviewFiles.Policy;
    }

    private bool IsOurs(HostString host) =>
        host.Host is "127.0.0.1" or "localhost" && (host.Port ?? 80) == Address.Port;

    // Another site's page may link here, but not load anything from here.
    private static bool IsFromElsewhere(HttpRequest request) =>
        request.Headers["Sec-Fetch-Site"] == "cross-site" && request.Headers["Sec-Fetch-Mode"] != "navigate";

    private async Task File(HttpResponse response, string address)
    {
        var isPage = address.EndsWith('/') || address.EndsWith(".html", StringComparison.Ordinal);
        if (isPage && site.State.IsStopped)
        {
            await Own(response, StatusCodes.Status200OK, PreviewPages.Stopped(site)).ConfigureAwait(false);
            return;
        }

        if (await Read(address).ConfigureAwait(false) is not { } bytes)
        {
            await Own(response, StatusCodes.Status404NotFound, PreviewPages.Missing()).ConfigureAwait(false);
        }
        else if (isPage)
        {
            var (html, policy) = PreviewFiles.WithScript(Encoding.UTF8.GetString(bytes), site.State.Version);
            response.Headers.ContentSecurityPolicy = policy;
            await Send(response, StatusCodes.Status200OK, PreviewFiles.TypeOf(".html"), html).ConfigureAwait(false);
        }
        else
        {
            await Send(response, StatusCodes.Status200OK, PreviewFiles.TypeOf(address), bytes).ConfigureAwait(false);
        }
    }

    // The site's folder changes places with a new one now and then; a file that is gone for that moment is back the next.
    private async Task<byte[]?> Read(string address)
    {
        for (var attempt = 0; attempt < 5; attempt++)
        {
            try
            {
                if (PreviewFiles.Locate(site.Folder, address) is { } file)
                {
                    return RegularFile.ReadAll(file);
                }

                if (Directory.Exists(site.Folder))
                {
                    return null;
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                // Tried again below.
            }

            await Task.Delay(40, stopping.Token).ConfigureAwait(false);
        }

        return null;
    }

    private async Task Tell(HttpContext context)
    {
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, stopping.Token);
        using var changed = new SemaphoreSlim(0);
        void Wake(PreviewState state) => changed.Release();
        context.Response.ContentType = "text/event-stream";
        site.Changed += Wake;
        string? told = null;
        try
        {
            while (true)
            {
                var version = site.State.Version;
                if (version != told)
                {
                    told = version;
                    await context.Response.WriteAsync($"data: {version}\n\n", ended.Token).ConfigureAwait(false);
                    await context.Response.Body.FlushAsync(ended.Token).ConfigureAwait(false);
                }

                await changed.WaitAsync(ended.Token).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException)
        {
            // The page was left, or the preview ends.
        }
        finally
        {
            site.Changed -= Wake;
        }
    }

    private Task Own(HttpResponse response, int code, string html) => Send(response, code, PreviewFiles.TypeOf(".html"), PreviewFiles.WithScript(html, site.State.Version).Html);

    private static Task Send(HttpResponse response, int code, string type, string text) => Send(response, code, type, Encoding.UTF8.GetBytes(text));

    private static async Task Send(HttpResponse response, int code, string type, byte[] bytes)
    {
        response.StatusCode = code;
        response.ContentType = type;
        response.ContentLength = bytes.Length;
        if (!HttpMethods.IsHead(response.HttpContext.Request.Method))
        {
            await response.Body.WriteAsync(bytes).ConfigureAwait(false);
        }
    }
}
