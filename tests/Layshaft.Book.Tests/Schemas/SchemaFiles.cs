using System.Runtime.CompilerServices;
using Layshaft.Book.Schemas;

namespace Layshaft.Book.Tests.Schemas;

/// <summary>A file of a book with the schema of its kind.</summary>
internal sealed record SchemaFile(string Book, string Path, string Text, BookSchema Schema)
{
    public string Name => $"{Book}/{Path}";

    /// <summary>The files of the demo, the small book and the book of mistakes.</summary>
    public static IReadOnlyList<SchemaFile> All { get; } =
    [
        .. In("demo", Path3("..", "..", "..", "demo-data")),
        .. In("Small", Books.Folder("Small")),
        .. In("ThirtyMistakes", Books.Folder("ThirtyMistakes")),
    ];

    /// <summary>The folder of this source file.</summary>
    public static string Here([CallerFilePath] string path = "") => System.IO.Path.GetDirectoryName(path)!;

    private static string Path3(params string[] parts) => System.IO.Path.Combine([Here(), .. parts]);

    private static IEnumerable<SchemaFile> In(string book, string folder) => Directory
        .EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .Select(file => (File: file, Path: System.IO.Path.GetRelativePath(folder, file).Replace('\\', '/')))
        .Where(f => BookSchema.For(f.Path) is not null)
        .Select(f => new SchemaFile(book, f.Path, File.ReadAllText(f.File), BookSchema.For(f.Path)!));
}
