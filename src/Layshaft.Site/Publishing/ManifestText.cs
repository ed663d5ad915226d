using System.Text.Json;

namespace Layshaft.Site.Publishing;

/// <summary>Reads the list of our files token by token: as a document it would be several times as large in memory.</summary>
internal static class ManifestText
{
    /// <summary>Adds the files of a list.</summary>
    /// <param name="json">The list.</param>
    /// <param name="entries">Receives its files.</param>
    /// <returns>Whether it is a sound list of ours.</returns>
    /// <exception cref="JsonException">It is not JSON.</exception>
    internal static bool Read(ReadOnlySpan<byte> json, List<ManifestEntry> entries)
    {
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
            reader.Read();
            if (isFormat)
            {
                isKnown = reader.GetInt32() == 1;
            }
            else if (isFiles)
            {
                isComplete = ReadFiles(ref reader, entries);
            }
            else
            {
                reader.Skip();
            }
        }

        return isKnown && isComplete && !reader.Read();
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
