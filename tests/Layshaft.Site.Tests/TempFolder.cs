namespace Layshaft.Site.Tests;

/// <summary>A folder of a test's own, removed after it.</summary>
public sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("layshaft-test-").FullName;

    public string At(string relative) => System.IO.Path.Combine(Path, relative);

    public void Write(string relative, string text) => WriteBytes(relative, System.Text.Encoding.UTF8.GetBytes(text));

    public void WriteBytes(string relative, byte[] bytes)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(relative))!);
        File.WriteAllBytes(At(relative), bytes);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
