using System.Diagnostics;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>A pipe with nobody at its other end, wherever a publish reads or writes.</summary>
public sealed class PipeTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly SiteFolders _folders = new();

    public void Dispose() => _folders.Dispose();

    [Theory]
    [InlineData("book/jobs/pipe", ExitCode.Problems)]
    [InlineData("book/shop.yaml", ExitCode.Problems)]
    [InlineData("book/.layshaft-secret", ExitCode.Problems)]
    [InlineData("book/pipe", ExitCode.Fine)]
    [InlineData("site/shop/layshaft-manifest.json", ExitCode.Problems)]
    [InlineData("site/shop/index.html", ExitCode.Fine)]
    [InlineData("site/pipe", ExitCode.Fine)]
    [InlineData(".layshaft-site/stamp", ExitCode.Fine)]
    [InlineData(".layshaft-site/stamp-new", ExitCode.Fine)]
    [InlineData(".layshaft-site/cache", ExitCode.Fine)]
    [InlineData(".layshaft-site/cache-new", ExitCode.Fine)]
    [InlineData(".layshaft-site/manifest-next", ExitCode.Fine)]
    [InlineData(".layshaft-site/changes.txt-new", ExitCode.Fine)]
    public void It_does_not_keep_a_publish_waiting(string place, int code)
    {
        if (OperatingSystem.IsWindows())
        {
            return; // there are no named pipes among files there
        }

        var book = _folders.SmallBook("book", "First Shop");
        Assert.Equal(ExitCode.Fine, Publish(book));
        File.WriteAllText(Path.Combine(book, "shop.yaml"), File.ReadAllText(Path.Combine(book, "shop.yaml")).Replace("First Shop", "Other Shop", StringComparison.Ordinal));
        File.Delete(_folders.At(place));
        using (var made = Process.Start(new ProcessStartInfo("mkfifo") { ArgumentList = { _folders.At(place) } })!)
        {
            made.WaitForExit();
        }

        Assert.Equal(code, Publish(book));
    }

    private int Publish(string book)
    {
        var code = -1;
        var publish = new Thread(() => code = Entry.Run(["publish", book, "--out", _folders.At("site")], TextWriter.Null, TextWriter.Null)) { IsBackground = true };
        publish.Start();
        Assert.True(publish.Join(Patience), "It has not come back.");
        return code;
    }
}
