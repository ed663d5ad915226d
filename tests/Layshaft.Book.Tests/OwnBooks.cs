using System.Runtime.CompilerServices;

namespace Layshaft.Book.Tests;

/// <summary>The books of the repository that users see: the demo and the one that a new book begins from.</summary>
internal static class OwnBooks
{
    public static string Folder(string name, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", name);

    /// <summary>The YAML files, by path from the book's folder.</summary>
    public static IReadOnlyDictionary<string, string> Texts(string name) => new SortedDictionary<string, string>(
        Directory.EnumerateFiles(Folder(name), "*.yaml", SearchOption.AllDirectories)
            .ToDictionary(p => Path.GetRelativePath(Folder(name), p).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal),
        StringComparer.Ordinal);
}
