using System.Diagnostics;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>The real program in a process of its own.</summary>
internal static class Child
{
    private const string Secret = "a-secret-for-tests-0123456789abcdef";

    /// <summary>Starts a publish.</summary>
    public static Process Publish(string book, string output, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            ArgumentList = { Path.Combine(AppContext.BaseDirectory, "layshaft.dll"), "publish", book, "--out", output },
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["LAYSHAFT_SECRET"] = Secret;
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        var child = Process.Start(start)!;
        child.OutputDataReceived += (_, _) => { };
        child.BeginOutputReadLine();
        return child;
    }

    /// <summary>Publishes and waits; fails with what the program said when it did not end well.</summary>
    public static void PublishWhole(string book, string output, params (string Name, string Value)[] environment)
    {
        using var child = Publish(book, output, environment);
        var errors = child.StandardError.ReadToEnd();
        child.WaitForExit();
        Assert.True(child.ExitCode == 0, errors);
    }
}
