using System.Text;
using Layshaft.Book.Schemas;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Starting;

/// <summary>The small book of an invented shop that comes inside the program (<c>StarterBook/</c> in this project).</summary>
internal static class StarterBook
{
    private const string Prefix = "starter-book/";

    /// <summary>The unit of the book that its next steps name.</summary>
    public const string Unit = "d4-001";

    /// <summary>The paths of its files, with forward slashes.</summary>
    public static IReadOnlyList<string> Paths { get; } =
    [
        .. typeof(StarterBook).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..].Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Writes the book and its schemas; each file that has a schema begins with the line that names it.</summary>
    /// <param name="folder">A folder that does not exist or is empty.</param>
    public static void Write(string folder)
    {
        foreach (var path in Paths)
        {
            var target = Path.Combine(folder, path.Replace('/', Path.DirectorySeparatorChar));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            using var file = new FileStream(target, FileMode.CreateNew, FileAccess.Write);
            if (BookSchema.For(path) is { } schema)
            {
                file.Write(Encoding.UTF8.GetBytes(schema.HeaderLine + "\n"));
            }

            using var content = Open(path);
            content.CopyTo(file);
        }

        SchemaCommand.Write(Path.Combine(folder, BookSchema.FolderName));
    }

    private static Stream Open(string path)
    {
        var assembly = typeof(StarterBook).Assembly;
        return assembly.GetManifestResourceStream(Prefix + path) ?? assembly.GetManifestResourceStream(Prefix + path.Replace('/', '\\'))!;
    }
}
