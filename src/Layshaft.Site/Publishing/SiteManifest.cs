using System.Buffers;
using System.Globalization;
using System.Text.Json;
using Layshaft.Site.Publishing.Links;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Publishing;

/// <summary>A file that we wrote.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Size">Its length in bytes.</param>
/// <param name="Sha256">Its SHA-256.</param>
public sealed record ManifestEntry(string Path, long Size, ContentHash Sha256);

/// <summary>
/// The list of files that we wrote, kept in the site itself so that both are always of the same publish. It follows from
/// the files alone, but for the links that the site has and had: those it carries on from the list before.
/// </summary>
public sealed class SiteManifest
{
    private const int Block = 1 << 16;
    private const int MostDigits = 20;

    private readonly PathIndex<ManifestEntry> _entries;

    internal SiteManifest(IEnumerable<ManifestEntry> entries, LinkHistory? links = null) => (_entries, Links) = (new(entries, e => e.Path), links ?? LinkHistory.None);

    /// <summary>The links that the site has or had.</summary>
    internal LinkHistory Links { get; }

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
            return ManifestText.Read(json.Span, entries, out var links) ? new(entries, links) : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The hash of a list as it is written.</summary>
    /// <param name="files">The files.</param>
    /// <param name="links">The links that the site has or had.</param>
    internal static ContentHash HashOf(SiteRegister files, LinkHistory links) => Write(Stream.Null, files, links);

    /// <summary>Writes a list as JSON, one file a line. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="files">The files.</param>
    /// <param name="links">The links that the site has or had; before the files, so that they are read without them.</param>
    /// <returns>The hash of what was written.</returns>
    internal static ContentHash Write(Stream to, SiteRegister files, LinkHistory links)
    {
        using var hashed = new HashingStream(to, leaveOpen: true);
        var buffer = new ArrayBufferWriter<byte>(2 * Block);
        buffer.Write("{\n\"format\": 1,\n"u8);
        links.Write(buffer);
        buffer.Write("\"files\": [\n"u8);
        for (var i = 0; i < files.Count; i++)
        {
            if (i > 0)
            {
                buffer.Write(",\n"u8);
            }

            Write(buffer, files.Paths[i], files[i]);
            if (buffer.WrittenCount > Block)
            {
                hashed.Write(buffer.WrittenSpan);
                buffer.ResetWrittenCount();
            }
        }

        buffer.Write(files.Count > 0 ? "\n]\n}\n"u8 : "]\n}\n"u8);
        hashed.Write(buffer.WrittenSpan);
        return hashed.Hash();
    }

    private static void Write(ArrayBufferWriter<byte> buffer, ReadOnlySpan<byte> path, RegisterRow row)
    {
        buffer.Write("{\"path\": \""u8);
        buffer.Write(path);
        buffer.Write("\", \"size\": "u8);
        _ = row.Size.TryFormat(buffer.GetSpan(MostDigits), out var length, default, CultureInfo.InvariantCulture);
        buffer.Advance(length);
        buffer.Write(", \"sha256\": \""u8);
        row.Sha256.WriteTo(buffer.GetSpan(2 * ContentHash.Bytes));
        buffer.Advance(2 * ContentHash.Bytes);
        buffer.Write("\"}"u8);
    }
}
