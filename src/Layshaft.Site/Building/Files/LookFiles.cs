using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Look;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>A stylesheet or font of the look.</summary>
/// <param name="Name">Path below <c>look/</c>, with forward slashes.</param>
/// <param name="Hash">SHA-256 of its content.</param>
/// <param name="Read">Reads it.</param>
public sealed record LookFile(string Name, string Hash, Func<byte[]> Read);

/// <summary>Stylesheets and fonts: the shop's own laid over ours by the same name.</summary>
public static class LookFiles
{
    private static readonly string[] Endings = [".css", ".woff2", ".txt", ".js"];

    // Links are not followed; nothing empty is opened, for a pipe says that it holds nothing and never ends.
    private static readonly EnumerationOptions Walk = new() { AttributesToSkip = FileAttributes.ReparsePoint, RecurseSubdirectories = true, MaxRecursionDepth = 8 };

    /// <summary>The text of each sheet that stands in pages, by name.</summary>
    public static IReadOnlyDictionary<string, string> Sheets(TemplateFolders folders) => In(folders)
        .Where(f => PageStyles.Sheets.Contains(f.Name))
        .ToDictionary(f => f.Name, f => Encoding.UTF8.GetString(f.Read()), StringComparer.Ordinal);

    /// <summary>The files, by name.</summary>
    public static IReadOnlyList<LookFile> In(TemplateFolders folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        var byName = new SortedDictionary<string, LookFile>(StringComparer.Ordinal);
        foreach (var root in new[] { folders.Ours, folders.Shop }.OfType<string>())
        {
            var look = Path.Combine(root, "look");
            if (!Directory.Exists(look))
            {
                continue;
            }

            foreach (var path in Directory.EnumerateFiles(look, "*", Walk).Where(p => Endings.Contains(Path.GetExtension(p)) && new FileInfo(p).Length > 0))
            {
                var name = Path.GetRelativePath(look, path).Replace(Path.DirectorySeparatorChar, '/');
                byName[name] = new LookFile(name, Convert.ToHexStringLower(SHA256.HashData(RegularFile.ReadAll(path))), () => RegularFile.ReadAll(path));
            }
        }

        return [.. byName.Values];
    }
}
