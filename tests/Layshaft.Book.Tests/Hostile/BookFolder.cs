namespace Layshaft.Book.Tests.Hostile;

/// <summary>The small book in a folder of its own, to be spoilt by a test.</summary>
internal sealed class BookFolder : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("ly-");

    public BookFolder()
    {
        foreach (var (path, bytes) in Books.SmallFiles())
        {
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(path))!);
            File.WriteAllBytes(At(path), bytes);
        }
    }

    /// <summary>The book's folder.</summary>
    public string Path => System.IO.Path.Combine(home.FullName, "book");

    /// <summary>A folder beside the book, that nothing in the book may lead to.</summary>
    public string Outside => Directory.CreateDirectory(System.IO.Path.Combine(home.FullName, "outside")).FullName;

    public string At(string path) => System.IO.Path.Combine(Path, path);

    public void Dispose() => home.Delete(recursive: true);
}
