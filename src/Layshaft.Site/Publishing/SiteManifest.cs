using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Layshaft.Site.Publishing;

/// <summary>A file that we wrote.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Size">Its length in bytes.</param>
/// <param name="Sha256">Its SHA-256 in lower-case hexadecimal.</param>
public sealed record ManifestEntry(string Path, long Size, string Sha256);

/// <summary>
/// The list of files that we wrote, kept in the site itself so that both are always of the same publish. It follows from
/// the files alone: the same site has the same list, on any machine.
/// </summary>
public sealed class SiteManifest
{
    private readonly SortedDictionary<string, ManifestEntry> _entries = new(StringComparer.Ordinal);

    internal SiteManifest(IEnumerable<ManifestEntry> entries)
    {
        foreach (var entry in entries)
        {
            _entries.Add(entry.Path, entry);
        }
    }

    /// <summary>The entries in order of path.</summary>
    public IReadOnlyCollection<ManifestEntry> Entries => _entries.Values;

    /// <summary>The entry of a path, or null.</summary>
    /// <param name="path">The path.</param>
    public ManifestEntry? Find(string path) => _entries.GetValueOrDefault(path);

    /// <summary>Reads a list back.</summary>
    /// <param name="json">The file's bytes.</param>
    /// <returns>The list, or null if these bytes are not one.</returns>
    public static SiteManifest? Parse(ReadOnlyMemory<byte> json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            if (document.RootElement.GetProperty("format").GetInt32() != 1)
            {
                return null;
            }

            var entries = document.RootElement.GetProperty("files").EnumerateArray().Select(file => new ManifestEntry(
                file.GetProperty("path").GetString()!, file.GetProperty("size").GetInt64(), file.GetProperty("sha256").GetString()!)).ToList();
            return entries.TrueForAll(IsSound) ? new(entries) : null;
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The list as JSON, one file a line. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    internal byte[] ToJson()
    {
        var json = new StringBuilder("{\n\"format\": 1,\n\"files\": [");
        var separator = "\n";
        foreach (var entry in _entries.Values)
        {
            json.Append(separator).Append(CultureInfo.InvariantCulture,
                $"{{\"path\": \"{entry.Path}\", \"size\": {entry.Size}, \"sha256\": \"{entry.Sha256}\"}}");
            separator = ",\n";
        }

        return Encoding.ASCII.GetBytes(json.Append("\n]\n}\n").ToString());
    }

    // A list that someone changed must not make us touch anything outside the site.
    private static bool IsSound(ManifestEntry entry) =>
        entry is { Path: not null, Sha256.Length: 64, Size: >= 0 } && OutputPath.ProblemWith(entry.Path) is null;
}
