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

    internal SiteManifest(IEnumerable<ManifestEntry> entries) => _entries = new(entries, e => e.Path);

    /// <summary>The entries in order of path.</summary>
    public IReadOnlyCollection<ManifestEntry> Entries => _entries;

    /// <summary>The entry of a path, or null.</summary>
    /// <param name="path">The path.</param>
    public ManifestEntry? Find(string path) => _entries.Find(path);

    /// <summary>Reads a list back.</summary>
    /// <param name="json">The file's bytes.</param>
    /// <returns>The list, or null if these bytes are not one.</returns>
    public static SiteManifest? Parse(ReadOnlyMemory<byte> json)
    {
        try
        {
            var entries = new List<ManifestEntry>();
            return ManifestText.Read(json.Span, entries) ? new(entries) : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The hash of a list as it is written.</summary>
    /// <param name="entries">The files in order of path.</param>
    internal static ContentHash HashOf(IEnumerable<ManifestEntry> entries) => Write(Stream.Null, entries);

    /// <summary>Writes a list as JSON, one file a line. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="entries">The files in order of path; gone through once, since there may be very many.</param>
    /// <returns>The hash of what was written.</returns>
    internal static ContentHash Write(Stream to, IEnumerable<ManifestEntry> entries)
    {
        using var hashed = new HashingStream(to, leaveOpen: true);
        using (var writer = new StreamWriter(hashed, Encoding.ASCII, 1 << 16, leaveOpen: true))
        {
            var separator = "{\n\"format\": 1,\n\"files\": [\n";
            var any = false;
            Span<char> text = stackalloc char[2 * ContentHash.Bytes];
            foreach (var entry in entries)
            {
                writer.Write(any ? ",\n" : separator);
                writer.Write("{\"path\": \"");
                writer.Write(entry.Path);
                writer.Write("\", \"size\": ");
                _ = entry.Size.TryFormat(text, out var length, default, CultureInfo.InvariantCulture);
                writer.Write(text[..length]);
                writer.Write(", \"sha256\": \"");
                entry.Sha256.WriteTo(text);
                writer.Write(text);
                writer.Write("\"}");
                any = true;
            }

            writer.Write(any ? "\n]\n}\n" : separator + "]\n}\n");
        }

        return hashed.Hash();
    }
}
