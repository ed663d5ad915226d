using System.IO.Compression;
using System.Net;
using System.Net.Sockets;

namespace Layshaft.Benchmarks.FirstView;

/// <summary>Serves a folder to this machine alone, texts compressed as most hosts send them.</summary>
internal sealed class LoopbackSite : IDisposable
{
    private static readonly Dictionary<string, (string Type, bool Compress)> Types = new(StringComparer.Ordinal)
    {
        [".html"] = ("text/html; charset=utf-8", true),
        [".css"] = ("text/css", true),
        [".js"] = ("text/javascript", true),
        [".json"] = ("application/json", true),
        [".jpg"] = ("image/jpeg", false),
        [".png"] = ("image/png", false),
        [".woff2"] = ("font/woff2", false),
    };

    private readonly string _folder;
    private readonly HttpListener _listener = new();

    public LoopbackSite(string folder)
    {
        _folder = Path.GetFullPath(folder);
        Address = $"http://127.0.0.1:{FreePort()}/";
        _listener.Prefixes.Add(Address);
        _listener.Start();
        _ = Task.Run(Serve);
    }

    public string Address { get; }

    public void Dispose() => _listener.Close();

    private async Task Serve()
    {
        while (_listener.IsListening)
        {
            try
            {
                await Answer(await _listener.GetContextAsync().ConfigureAwait(false)).ConfigureAwait(false);
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException or IOException)
            {
                // The browser went away, or the measuring is over.
            }
        }
    }

    private async Task Answer(HttpListenerContext context)
    {
        var path = Path.GetFullPath(Path.Combine(_folder, Uri.UnescapeDataString(context.Request.Url!.AbsolutePath).TrimStart('/')));
        var known = Types.TryGetValue(Path.GetExtension(path), out var type);
        if (!known || !path.StartsWith(_folder + Path.DirectorySeparatorChar, StringComparison.Ordinal) || !File.Exists(path))
        {
            context.Response.StatusCode = 404;
            context.Response.Close();
            return;
        }

        var bytes = await File.ReadAllBytesAsync(path).ConfigureAwait(false);
        context.Response.ContentType = type.Type;
        if (type.Compress)
        {
            bytes = Compressed(bytes);
            context.Response.AddHeader("Content-Encoding", "gzip");
        }

        context.Response.ContentLength64 = bytes.Length;
        await context.Response.OutputStream.WriteAsync(bytes).ConfigureAwait(false);
        context.Response.Close();
    }

    private static byte[] Compressed(byte[] bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal))
        {
            gzip.Write(bytes);
        }

        return packed.ToArray();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
