using System.Security.Cryptography;
using System.Text;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>A folder with books, and sites as one text each that can be compared.</summary>
internal sealed class SiteFolders : IDisposable
{
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("layshaft-sites-");

    public string At(string name) => Path.Combine(_root.FullName, name);

    public void Dispose() => _root.Delete(recursive: true);

    /// <summary>The book that <c>new-book</c> makes: gearing, a photo, one finished job.</summary>
    public string StarterBook(string name)
    {
        Assert.Equal(0, Entry.Run(["new-book", At(name)], TextWriter.Null, TextWriter.Null));
        return At(name);
    }

    /// <summary>The smallest book, under a shop's name.</summary>
    public string SmallBook(string name, string shop)
    {
        var small = Path.Combine(AppContext.BaseDirectory, "Small");
        foreach (var file in Directory.EnumerateFiles(small, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(At(name), Path.GetRelativePath(small, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        var path = Path.Combine(At(name), "shop.yaml");
        File.WriteAllLines(path, File.ReadAllLines(path).Select(l => l.StartsWith("name:", StringComparison.Ordinal) ? $"name: {shop}" : l));
        return At(name);
    }

    /// <summary>Paths and hashes of all files of a site.</summary>
    public string Tree(string name)
    {
        var text = new StringBuilder();
        foreach (var path in Directory.EnumerateFiles(At(name), "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            text.Append(Path.GetRelativePath(At(name), path)).Append(' ').Append(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path)))).Append('\n');
        }

        return text.ToString();
    }
}
