using System.Diagnostics;

namespace Layshaft.Site.Tests.Photos;

/// <summary>What only the first pictures of a process can show.</summary>
public sealed class ColdStartTests : IDisposable
{
    // Without the guard in ColourSpaces three in ten of such processes died.
    private const int Processes = 12;

    private readonly TempFolder _folder = new();

    public ColdStartTests()
    {
        _folder.WriteBytes("one.jpg", SyntheticPhoto.Jpeg(320, 240, 1));
        _folder.WriteBytes("other.jpg", SyntheticPhoto.Jpeg(320, 240, 2));
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_first_inspection_takes_no_colour_space_from_another_thread() => Start("one.jpg");

    [Fact]
    public void The_first_photos_of_a_process_may_be_made_side_by_side()
    {
        for (var i = 0; i < Processes; i++)
        {
            Start("one.jpg", "other.jpg");
        }
    }

    private void Start(params string[] photos)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet") { RedirectStandardError = true };
        foreach (var argument in photos.Select(_folder.At).Prepend(typeof(ColdStart).Assembly.Location))
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"exit code {process.ExitCode} {said}");
    }
}
