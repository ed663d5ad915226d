using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Layshaft.Site.Publishing;

/// <summary>A file that we wrote.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Size">Its length in bytes.</param>
/// <param name="Sha256">Its SHA-256.</param>
public sealed record ManifestEntry(string Path, long Size, ContentHash Sha256);

/// <summary>
/// The list of files that we wrote, kept in the site itself so that both are always of the same publish. It follows from
/// the files alone: the same site has the same list, on any machine.
/// </summary>
public sealed class SiteManifest
{
    private readonly PathIndex<ManifestEntry> _entries;
    private readonly Lazy<ContentHash> _hash;

    internal SiteManifest(IEnumerable<ManifestEntry> entries) => (_entries, _hash) = (new(entries, e => e.Path), new(Written));

    /// <summary>The entries in order of path.</summary>
    public IReadOnlyCollection<ManifestEntry> Entries => _entries;

    /// <summary>The entry of a path, or null.</summary>
    /// <param name="path">The path.</param>
    public ManifestEntry? Find(string path) => _entries.Find(path);

    /// <summary>Reads a list back.</summary>
    /// <param name="json">The file's bytes.</param>
    /// <returns>The list, or null if these bytes are not one.</returns>
    public static SiteManifest? Parse(ReadOnlyMemory<byte> json) => Parse(json, path => path.ToString());

    /// <summary>Reads a list back.</summary>
    /// <param name="json">The file's bytes.</param>
    /// <param name="text">Gives the text of a path, so that the same path need be in memory only once.</param>
    internal static SiteManifest? Parse(ReadOnlyMemory<byte> json, PathText text)
    {
        try
        {
            var entries = new List<ManifestEntry>();
            return ManifestText.Read(json.Span, entries, text) ? new(entries) : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The hash of the list as it is written.</summary>
    internal ContentHash Hash() => _hash.Value;

    /// <summary>Writes the list as JSON, one file a line. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    internal void WriteTo(Stream stream)
    {
        using var writer = new StreamWriter(stream, Encoding.ASCII, 1 << 16, leaveOpen: true);
        var separator = "{\n\"format\": 1,\n\"files\": [\n";
        foreach (var entry in _entries)
        {
            writer.Write(separator);
            writer.Write(string.Create(CultureInfo.InvariantCulture, $"{{\"path\": \"{entry.Path}\", \"size\": {entry.Size}, \"sha256\": \"{entry.Sha256}\"}}"));
            separator = ",\n";
        }

        writer.Write(_entries.Count > 0 ? "\n]\n}\n" : separator + "]\n}\n");
    }

    private ContentHash Written()
    {
        using var stream = new HashingStream(Stream.Null);
        WriteTo(stream);
        return stream.Entry(string.Empty).Sha256;
    }
}
