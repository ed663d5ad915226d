using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

/// <summary>The books beside the tests.</summary>
internal static class Books
{
    public static string Folder(string name) => Path.Combine(AppContext.BaseDirectory, "Books", name);

    public static BookRead Small() => BookReader.ReadFolder(Folder("Small"));

    /// <summary>The texts of the small book, to be changed by a test.</summary>
    public static Dictionary<string, byte[]> SmallFiles() => Directory
        .EnumerateFiles(Folder("Small"), "*", SearchOption.AllDirectories)
        .ToDictionary(p => Path.GetRelativePath(Folder("Small"), p).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);

    /// <summary>Reads the small book with one file changed.</summary>
    public static BookRead SmallWith(string path, Func<string, string> change)
    {
        var files = SmallFiles();
        files[path] = System.Text.Encoding.UTF8.GetBytes(change(System.Text.Encoding.UTF8.GetString(files[path])));
        return BookReader.Read(new MemoryBookFiles(files));
    }
}
