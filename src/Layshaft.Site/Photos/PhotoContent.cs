using System.Text;

namespace Layshaft.Site.Photos;

/// <summary>Tells by the first bytes what a file holds: one of the photo formats, or what it is instead.</summary>
internal static class PhotoContent
{
    /// <summary>Bytes that are enough to tell.</summary>
    public const int HeadLength = 1024;

    private static readonly (string Mark, int At, string Name)[] Others =
    [
        ("%PDF", 0, "a PDF document"),
        ("GIF8", 0, "a GIF image"),
        ("BM", 0, "a BMP image"),
        ("II*\0", 0, "a TIFF or raw camera file"),
        ("MM\0*", 0, "a TIFF or raw camera file"),
        ("8BPS", 0, "a layered image"),
        ("PK\u0003\u0004", 0, "a ZIP archive or an office document"),
        ("RIFF", 0, "a sound or video file"),
        ("ftyp", 4, "a video"),
        ("\u001aE\u00df\u00a3", 0, "a video"),
        ("\0\0\0\fJXL ", 0, "a JPEG XL image"),
        ("\u00ff\n", 0, "a JPEG XL image"),
    ];

    /// <summary>The format by content, or null with what the file is instead ("a PDF document").</summary>
    public static (PhotoFormat? Format, string Instead) Tell(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith(Latin("\u00ff\u00d8\u00ff")))
        {
            return (PhotoFormat.Jpeg, "");
        }

        if (head.StartsWith(Latin("\u0089PNG\r\n\u001a\n")))
        {
            return (PhotoFormat.Png, "");
        }

        if (head.StartsWith("RIFF"u8) && head.Length >= 12 && head[8..12].SequenceEqual("WEBP"u8))
        {
            return (PhotoFormat.WebP, "");
        }

        if (HeifBrands.Tell(head) is { } heif)
        {
            return (heif, "");
        }

        foreach (var (mark, at, name) in Others)
        {
            if (head.Length >= at + mark.Length && head.Slice(at, mark.Length).SequenceEqual(Latin(mark)))
            {
                return (null, name);
            }
        }

        return (null, TellText(head));
    }

    private static string TellText(ReadOnlySpan<byte> head)
    {
        var text = Encoding.Latin1.GetString(head);
        if (text.Contains("<svg", StringComparison.OrdinalIgnoreCase))
        {
            return "an SVG drawing";
        }

        if (text.Contains("<html", StringComparison.OrdinalIgnoreCase) || text.Contains("<!doctype html", StringComparison.OrdinalIgnoreCase))
        {
            return "a web page (HTML)";
        }

        return text.AsSpan().ContainsAnyInRange('\0', '\u0008') ? "not a known image format" : "a text file";
    }

    private static byte[] Latin(string mark) => Encoding.Latin1.GetBytes(mark);
}
