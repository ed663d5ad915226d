using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using MetadataExtractor;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>Everything that can be read out of a file's bytes: as they are, and through each way of writing text otherwise.</summary>
internal static partial class HiddenText
{
    /// <summary>The texts in a file, its name among them.</summary>
    public static IEnumerable<string> In(string name, ReadOnlyMemory<byte> bytes)
    {
        yield return name;
        foreach (var text in InBytes(bytes.ToArray()))
        {
            yield return text;
        }
    }

    private static IEnumerable<string> InBytes(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        var unmarked = WebUtility.HtmlDecode(text);
        yield return text;
        yield return unmarked;
        yield return WebUtility.HtmlDecode(unmarked);
        yield return Uri.UnescapeDataString(text);
        yield return Uri.UnescapeDataString(unmarked);
        yield return JsonEscape().Replace(text, m => ((char)int.Parse(m.Groups[1].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());
        yield return CssEscape().Replace(text, m => ((char)(int.Parse(m.Groups[1].ValueSpan, NumberStyles.HexNumber, CultureInfo.InvariantCulture) & 0xFFFF)).ToString());
        foreach (var wide in new[] { Encoding.Unicode, Encoding.BigEndianUnicode })
        {
            yield return wide.GetString(bytes);
            yield return wide.GetString(bytes, Math.Min(1, bytes.Length), Math.Max(0, bytes.Length - 1));
        }

        foreach (var inner in Base64().Matches(text).Select(m => Decoded(m.Groups[1].Value)).Concat(PictureText(bytes)).SelectMany(InBytes))
        {
            yield return inner;
        }
    }

    private static byte[] Decoded(string base64)
    {
        var joined = base64.Replace("\r", string.Empty, StringComparison.Ordinal).Replace("\n", string.Empty, StringComparison.Ordinal).TrimEnd('=');
        var whole = joined[..(joined.Length - (joined.Length % 4 == 1 ? 1 : 0))];
        return Convert.FromBase64String(whole.PadRight((whole.Length + 3) / 4 * 4, '='));
    }

    // Place, device and words that a picture carries beside its pixels.
    private static IEnumerable<byte[]> PictureText(byte[] bytes)
    {
        if (bytes is not ([0xFF, 0xD8, ..] or [0x89, 0x50, ..] or [0x52, 0x49, 0x46, 0x46, ..]))
        {
            return [];
        }

        var tags = ImageMetadataReader.ReadMetadata(new MemoryStream(bytes)).SelectMany(d => d.Tags).Select(t => $"{t.Name}: {t.Description}");
        return [Encoding.UTF8.GetBytes(string.Join('\n', tags))];
    }

    [GeneratedRegex("\\\\u([0-9a-fA-F]{4})")]
    private static partial Regex JsonEscape();

    [GeneratedRegex("\\\\([0-9a-fA-F]{1,6}) ?")]
    private static partial Regex CssEscape();

    [GeneratedRegex("(?:base64,|base64\\r\\n\\r\\n)([A-Za-z0-9+/\\r\\n]{8,}=*)")]
    private static partial Regex Base64();
}
