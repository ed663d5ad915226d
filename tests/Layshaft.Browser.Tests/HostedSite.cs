using System.Net;
using System.Net.Sockets;

namespace Layshaft.Browser.Tests;

/// <summary>
/// A plain static host on the loopback interface: the trees for upload below a folder of their own, with the headers that the
/// guide to publishing names.
/// </summary>
internal sealed class HostedSite : IDisposable
{
    private static readonly string[] Uploaded = ["customers/", "reference/"];

    private readonly HttpListener listener = new();
    private readonly string folder;
    private readonly IReadOnlyList<(string Name, string Value)> headers;
    private readonly List<string> wrong = [];

    public HostedSite(string folder, IReadOnlyList<(string Name, string Value)> headers)
    {
        (this.folder, this.headers) = (folder, headers);
        Address = $"http://127.0.0.1:{FreePort()}/bench/reports/";
        listener.Prefixes.Add(Address);
        listener.Start();
        _ = Serve();
    }

    /// <summary>The address of the folder.</summary>
    public string Address { get; }

    /// <summary>What was asked for in vain, or with a referrer.</summary>
    public IReadOnlyList<string> Wrong
    {
        get
        {
            lock (wrong)
            {
                return [.. wrong];
            }
        }
    }

    public void Dispose() => listener.Close();

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            HttpListenerContext context;
            try
            {
                context = await listener.GetContextAsync();
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException)
            {
                return;
            }

            await Answer(context.Request, context.Response);
        }
    }

    private async Task Answer(HttpListenerRequest request, HttpListenerResponse response)
    {
        foreach (var (name, value) in headers)
        {
            response.AddHeader(name, value);
        }

        var path = Uri.UnescapeDataString(request.Url!.AbsolutePath["/bench/reports/".Length..]);
        var file = Path.Combine(folder, path);
        if (!Uploaded.Any(u => path.StartsWith(u, StringComparison.Ordinal)) || path.Contains("..", StringComparison.Ordinal) || !File.Exists(file))
        {
            Note($"not there: {path}");
            response.StatusCode = 404;
        }
        else
        {
            if (request.Headers["Referer"] is { } referrer)
            {
                Note($"{path} was asked for with the referrer {referrer}");
            }

            response.ContentType = TypeOf(file);
            await response.OutputStream.WriteAsync(await File.ReadAllBytesAsync(file));
        }

        response.Close();
    }

    private void Note(string what)
    {
        lock (wrong)
        {
            wrong.Add(what);
        }
    }

    private static string TypeOf(string file) => Path.GetExtension(file) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".json" => "application/json",
        ".csv" => "text/csv; charset=utf-8",
        ".jpg" => "image/jpeg",
        ".png" => "image/png",
        ".woff2" => "font/woff2",
        _ => "text/plain; charset=utf-8",
    };

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
