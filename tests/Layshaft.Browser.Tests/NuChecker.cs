using System.Diagnostics;
using System.Text.Json;

namespace Layshaft.Browser.Tests;

/// <summary>The Nu HTML checker of the W3C's validator (npm package vnu-jar), started once for many files.</summary>
internal static class NuChecker
{
    /// <summary>Where the test command puts it, below the tests' folder.</summary>
    private const string Usual = ".tools/node_modules/vnu-jar/build/dist/vnu.jar";

    /// <summary>The checker's archive: the one that LAYSHAFT_NU_CHECKER names, or the test command's; null for none.</summary>
    public static string? Jar
    {
        get
        {
            if (Environment.GetEnvironmentVariable("LAYSHAFT_NU_CHECKER") is { Length: > 0 } named)
            {
                return named;
            }

            for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            {
                if (folder.Name == "tests" && Path.Combine(folder.FullName, Usual) is var jar && File.Exists(jar))
                {
                    return jar;
                }
            }

            return null;
        }
    }

    /// <summary>A property of SVG 2 (13.7) that browsers know and the checker's list of CSS does not: the edge of a chart's letters.</summary>
    private const string NotInItsList = "CSS: “paint-order”: Property “paint-order” doesn't exist.";

    /// <summary>Whether the checker and the Java that it runs on are here.</summary>
    public static bool IsReady => Jar is { } jar && File.Exists(jar)
        && (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Any(folder => File.Exists(Path.Combine(folder, "java")) || File.Exists(Path.Combine(folder, "java.exe")));

    /// <summary>Every error in the files, as FILE:LINE: MESSAGE.</summary>
    public static async Task<IReadOnlyList<string>> ErrorsIn(IEnumerable<string> files)
    {
        var start = new ProcessStartInfo("java") { RedirectStandardError = true };
        foreach (var argument in new[] { "-Xss8m", "-jar", Jar!, "--errors-only", "--exit-zero-always", "--format", "json" }.Concat(files))
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var said = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0 && said.Contains("\"messages\"", StringComparison.Ordinal), $"The checker did not run: {said}");
        using var report = JsonDocument.Parse(said[said.IndexOf('{', StringComparison.Ordinal)..]);
        return [.. report.RootElement.GetProperty("messages").EnumerateArray().Select(Text).Where(t => !t.EndsWith(NotInItsList, StringComparison.Ordinal))];
    }

    private static string Text(JsonElement message)
    {
        var line = message.TryGetProperty("lastLine", out var last) ? last.GetRawText() : "?";
        var file = message.TryGetProperty("url", out var url) ? url.GetString() : "?";
        return $"{file}:{line}: {message.GetProperty("message").GetString()}";
    }
}

/// <summary>A test that needs the Nu HTML checker, left out with a word why where it is not there.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NuCheckerFactAttribute : FactAttribute
{
    public NuCheckerFactAttribute()
    {
        if (!NuChecker.IsReady)
        {
            Skip = "The Nu HTML checker is not here. `dotnet run tests/run.cs` fetches it with npm; or name a vnu.jar in LAYSHAFT_NU_CHECKER. It needs Java (Debian: default-jre-headless).";
        }
    }
}
