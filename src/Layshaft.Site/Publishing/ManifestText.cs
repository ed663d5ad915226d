using System.Text.Json;
using Layshaft.Site.Publishing.Links;

namespace Layshaft.Site.Publishing;

/// <summary>Reads the list of our files token by token: as a document it would be several times as large in memory.</summary>
internal static class ManifestText
{
    private const int Block = 1 << 16;

    /// <summary>Adds the files of a list.</summary>
    /// <param name="json">The list.</param>
    /// <param name="entries">Receives its files.</param>
    /// <param name="links">The links that the site has or had.</param>
    /// <returns>Whether it is a sound list of ours.</returns>
    /// <exception cref="JsonException">It is not JSON.</exception>
    internal static bool Read(ReadOnlySpan<byte> json, List<ManifestEntry> entries, out LinkHistory links)
    {
        links = LinkHistory.None;
        var reader = new Utf8JsonReader(json);
        var (isKnown, isComplete) = (false, false);
        reader.Read();
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            return false;
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var isFormat = reader.ValueTextEquals("format"u8);
            var isFiles = reader.ValueTextEquals("files"u8);
            var isLinks = reader.ValueTextEquals("links"u8);
            reader.Read();
            if (isFormat)
            {
                isKnown = reader.GetInt32() == 1;
            }
            else if (isFiles)
            {
                isComplete = ReadFiles(ref reader, entries);
            }
            else if (isLinks)
            {
                links = LinkHistory.Read(ref reader);
            }
            else
            {
                reader.Skip();
            }
        }

        return isKnown && isComplete && !reader.Read();
    }

    /// <summary>Reads the links of a list that is known to be as it was written: they come before its files, which are not read.</summary>
    /// <param name="list">The list.</param>
    /// <exception cref="FormatException">It is something else.</exception>
    internal static LinkHistory ReadLinks(Stream list)
    {
        for (var (bytes, filled) = (new byte[Block], 0); ; Array.Resize(ref bytes, 2 * bytes.Length))
        {
            filled += list.ReadAtLeast(bytes.AsSpan(filled), bytes.Length - filled, throwOnEndOfStream: false);
            var isAll = filled < bytes.Length;
            if (TryReadLinks(new Utf8JsonReader(bytes.AsSpan(0, filled), isAll, default)) is { } links)
            {
                return links;
            }

            if (isAll)
            {
                throw new FormatException();
            }
        }
    }

    // Null where the bytes end before that is known.
    private static LinkHistory? TryReadLinks(Utf8JsonReader reader)
    {
        reader.Read();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName && !reader.ValueTextEquals("files"u8))
        {
            var isLinks = reader.ValueTextEquals("links"u8);
            if (!reader.Read())
            {
                return null;
            }

            var rest = reader;
            if (!rest.TrySkip())
            {
                return null;
            }

            if (isLinks)
            {
                return LinkHistory.Read(ref reader);
            }

            reader = rest;
        }

        return reader.TokenType == JsonTokenType.PropertyName ? LinkHistory.None : null;
    }

    private static bool ReadFiles(ref Utf8JsonReader reader, List<ManifestEntry> entries)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            return false;
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.StartObject)
        {
            if (ReadFile(ref reader) is not { } entry)
            {
                return false;
            }

            entries.Add(entry);
        }

        return reader.TokenType == JsonTokenType.EndArray;
    }

    // A list that someone changed must not make us touch anything outside the site.
    private static ManifestEntry? ReadFile(ref Utf8JsonReader reader)
    {
        string? path = null;
        var size = -1L;
        ContentHash? hash = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var (isPath, isSize, isHash) = (reader.ValueTextEquals("path"u8), reader.ValueTextEquals("size"u8), reader.ValueTextEquals("sha256"u8));
            reader.Read();
            if (isPath)
            {
                path = reader.GetString();
            }
            else if (isSize)
            {
                size = reader.GetInt64();
            }
            else if (isHash)
            {
                hash = ContentHash.Parse(reader.GetString());
            }
            else
            {
                reader.Skip();
            }
        }

        return path is not null && size >= 0 && hash is { } sha256 && OutputPath.ProblemWith(path) is null ? new ManifestEntry(path, size, sha256) : null;
    }
}
