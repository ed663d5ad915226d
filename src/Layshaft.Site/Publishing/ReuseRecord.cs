using System.Text.Json;

namespace Layshaft.Site.Publishing;

/// <summary>What a file was made from, and its time when we last saw it whole.</summary>
/// <param name="Path">Its path in the site.</param>
/// <param name="Key">The key of its inputs, see <see cref="PlannedOutput"/>.</param>
/// <param name="Sha256">Its bytes' hash.</param>
/// <param name="Modified">Its time of change, in ticks.</param>
internal sealed record ReuseEntry(string Path, string Key, string Sha256, long Modified);

/// <summary>
/// Lets the next publish keep files without making or reading them. It is of this machine and stands outside the site,
/// which has no times in it; if it is lost, outputs are made again and nothing else happens.
/// </summary>
internal static class ReuseRecord
{
    internal static Dictionary<string, ReuseEntry> Read(string path)
    {
        try
        {
            var entries = JsonSerializer.Deserialize<List<ReuseEntry>>(File.ReadAllBytes(path)) ?? [];
            return entries.Where(e => e is { Path: not null, Key: not null, Sha256: not null })
                .DistinctBy(e => e.Path).ToDictionary(e => e.Path, StringComparer.Ordinal);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException)
        {
            return [];
        }
    }

    internal static byte[] Write(IEnumerable<ReuseEntry> entries) => JsonSerializer.SerializeToUtf8Bytes(entries);
}
