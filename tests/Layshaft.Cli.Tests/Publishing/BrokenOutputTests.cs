using System.Diagnostics;
using Layshaft.Cli.Commands;
using Layshaft.Cli.Terminal;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>Standard output or standard error that is closed, full, or that nobody reads to its end.</summary>
public sealed class BrokenOutputTests : IDisposable
{
    private readonly SiteFolders _folders = new();

    public void Dispose() => _folders.Dispose();

    [Theory]
    [InlineData("2>&-", ExitCode.Fine, "")]
    [InlineData("2>/dev/full", ExitCode.Fine, "")]
    [InlineData(">&-", ExitCode.Problems, "Standard output could not be written")]
    [InlineData(">/dev/full", ExitCode.Problems, "Standard output could not be written")]
    [InlineData(">&- 2>&-", ExitCode.Problems, "")]
    [InlineData(">/dev/full 2>/dev/full", ExitCode.Problems, "")]
    [InlineData("2>&1 | head -1 >/dev/null", ExitCode.Fine, "")]
    public async Task A_publish_is_completed_and_ends_in_words_or_silence(string where, int code, string words)
    {
        if (!OperatingSystem.IsLinux())
        {
            return; // /dev/full is there only
        }

        var book = _folders.SmallBook("book", "First Shop");
        var host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet";
        var command = $"set -o pipefail; '{host}' '{Path.Combine(AppContext.BaseDirectory, "layshaft.dll")}' publish '{book}' --out '{_folders.At("site")}' {where}";
        using var child = Process.Start(new ProcessStartInfo("bash") { ArgumentList = { "-c", command }, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var reading = (Output: child.StandardOutput.ReadToEndAsync(), Errors: child.StandardError.ReadToEndAsync());
        var (output, errors) = (await reading.Output, await reading.Errors);
        await child.WaitForExitAsync();

        Assert.True(code == child.ExitCode, $"exit code {child.ExitCode} {output} {errors}");
        Assert.Contains(words, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Unhandled", errors, StringComparison.Ordinal);
        Assert.True(File.Exists(_folders.At("site/shop/layshaft-manifest.json")));
    }

    [Fact]
    public void What_cannot_be_written_is_dropped_and_the_reason_kept()
    {
        using var full = new LenientWriter(new FullWriter());
        full.WriteLine("lost");
        full.Write('x');
        full.Flush();
        Assert.Equal("No space left on device", full.Failure);

        using var text = new StringWriter();
        using var good = new LenientWriter(text);
        good.Write("a");
        good.WriteLine("b");
        Assert.Equal(($"ab{Environment.NewLine}", null), (text.ToString(), good.Failure));
    }

    private sealed class FullWriter : TextWriter
    {
        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;

        public override void Write(char value) => throw new IOException("No space left on device.");

        public override void Write(string? value) => throw new IOException("No space left on device.");

        public override void WriteLine(string? value) => throw new IOException("No space left on device.");
    }
}
