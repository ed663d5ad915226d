using Microsoft.Playwright;

namespace Layshaft.Browser.Tests;

/// <summary>Debian's Chromium, or the one that LAYSHAFT_BROWSER names.</summary>
internal static class Browser
{
    private static readonly string[] Usual = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    public static string Path =>
        Environment.GetEnvironmentVariable("LAYSHAFT_BROWSER") is { Length: > 0 } named ? named
        : Array.Find(Usual, File.Exists)
            ?? throw new InvalidOperationException("These tests need a Chromium browser: install one (Debian, Ubuntu: sudo apt-get install chromium), or name it in LAYSHAFT_BROWSER.");

    public static Task<IBrowser> Launch(IPlaywright playwright) => playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = Path,
        Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
    });
}
