using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>
/// The list of files that we wrote, in the site itself so that both are always of the same publish. It follows from
/// the files alone, but for the links that the site has and had: those it takes over from the manifest before.
/// </summary>
/// <param name="Files">The files.</param>
/// <param name="Links">The links that the site has or had.</param>
internal sealed record SiteManifest(PathIndex<Trace> Files, LinkHistory Links)
{
    private const int Block = 1 << 16;
    private const int MostDigits = 20;

    /// <summary>Reads a manifest token by token: as a document it would be several times as large in memory.</summary>
    /// <param name="json">The file's bytes.</param>
    /// <returns>The manifest, or null if these bytes are not a sound one.</returns>
    internal static SiteManifest? Parse(ReadOnlySpan<byte> json)
    {
        try
        {
            var reader = new Utf8JsonReader(json);
            var (isKnown, files, links) = (false, (PathIndex<Trace>?)null, LinkHistory.None);
            Expect(reader.Read() && reader.TokenType == JsonTokenType.StartObject);
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                switch (NameOf(ref reader))
                {
                    case "format": isKnown = reader.GetInt32() == 1; break;
                    case "files": files = new(ReadList(ref reader, ReadFile)); break;
                    case "links": links = LinkHistory.Of(ReadList(ref reader, ReadLink)); break;
                    default: reader.Skip(); break;
                }
            }

            return isKnown && files is { HasTwins: false } && !reader.Read() ? new(files, links) : null;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    /// <summary>Writes a manifest as JSON, one file a line. Paths need no escaping, see <see cref="OutputPath"/>.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="files">The files.</param>
    /// <param name="links">The links that the site has or had.</param>
    /// <returns>The hash of what was written.</returns>
    internal static ContentHash Write(Stream to, PathIndex<Trace> files, LinkHistory links)
    {
        using var sha256 = SHA256.Create();
        using (var hashed = new CryptoStream(to, sha256, CryptoStreamMode.Write, leaveOpen: true))
        {
            var buffer = new ArrayBufferWriter<byte>(2 * Block);
            buffer.Write("{\n\"format\": 1,\n"u8);
            links.Write(buffer);
            buffer.Write("\"files\": [\n"u8);
            for (var i = 0; i < files.Count; i++)
            {
                Write(buffer, files[i], i == 0 ? [] : ",\n"u8);
                if (buffer.WrittenCount > Block)
                {
                    hashed.Write(buffer.WrittenSpan);
                    buffer.ResetWrittenCount();
                }
            }

            buffer.Write(files.Count > 0 ? "\n]\n}\n"u8 : "]\n}\n"u8);
            hashed.Write(buffer.WrittenSpan);
        }

        return ContentHash.Of(sha256.Hash!);
    }

    private static void Write(ArrayBufferWriter<byte> buffer, Trace file, ReadOnlySpan<byte> before)
    {
        buffer.Write(before);
        buffer.Write("{\"path\": \""u8);
        Encoding.UTF8.GetBytes(file.Path, buffer);
        buffer.Write("\", \"size\": "u8);
        _ = file.Size.TryFormat(buffer.GetSpan(MostDigits), out var length, default, CultureInfo.InvariantCulture);
        buffer.Advance(length);
        buffer.Write(", \"sha256\": \""u8);
        file.Sha256.WriteTo(buffer.GetSpan(2 * ContentHash.Bytes));
        buffer.Advance(2 * ContentHash.Bytes);
        buffer.Write("\"}"u8);
    }

    private delegate T ReadOne<out T>(ref Utf8JsonReader reader);

    private static List<T> ReadList<T>(ref Utf8JsonReader reader, ReadOne<T> read)
    {
        var items = new List<T>();
        Expect(reader.TokenType == JsonTokenType.StartArray);
        while (reader.Read() && reader.TokenType == JsonTokenType.StartObject)
        {
            items.Add(read(ref reader));
        }

        Expect(reader.TokenType == JsonTokenType.EndArray);
        return items;
    }

    private static Trace ReadFile(ref Utf8JsonReader reader)
    {
        var (path, size, hash) = ((string?)null, -1L, (ContentHash?)null);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            switch (NameOf(ref reader))
            {
                case "path": path = reader.GetString(); break;
                case "size": size = reader.GetInt64(); break;
                case "sha256": hash = ContentHash.Parse(reader.GetString()); break;
                default: reader.Skip(); break;
            }
        }

        // A list that someone changed must not make us touch anything outside the site.
        return path is not null && size >= 0 && hash is { } sha256 && OutputPath.ProblemWith(path) is null ? new(path, size, sha256) : throw new FormatException();
    }

    private static KnownLink ReadLink(ref Utf8JsonReader reader)
    {
        string? folder = null, unit = null, customer = null, name = null;
        bool? isOpen = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            switch (NameOf(ref reader))
            {
                case "link": folder = reader.GetString(); break;
                case "unit": unit = reader.GetString(); break;
                case "customer": customer = reader.GetString(); break;
                case "name": name = reader.GetString(); break;
                case "open": isOpen = reader.GetBoolean(); break;
                default: reader.Skip(); break;
            }
        }

        return folder is not null && unit is not null && customer is not null && name is not null && isOpen is { } open
            ? new(folder, unit, customer, name, open)
            : throw new FormatException();
    }

    // Leaves the reader at the value.
    private static string? NameOf(ref Utf8JsonReader reader)
    {
        var name = reader.GetString();
        reader.Read();
        return name;
    }

    private static void Expect(bool isSo)
    {
        if (!isSo)
        {
            throw new FormatException();
        }
    }
}
