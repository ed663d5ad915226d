namespace Layshaft.Site.Photos;

/// <summary>The frame header of a JPEG (ITU-T T.81, B.2.2): its size, and whether it is stored in several passes.</summary>
/// <param name="Outcome">Whether the frame header was found; the rest means nothing if not.</param>
/// <param name="Width">Samples in a line.</param>
/// <param name="Height">Number of lines.</param>
/// <param name="Components">Number of colour components.</param>
/// <param name="InPasses">Progressive: a decoder must hold all coefficients of the picture at once.</param>
internal readonly record struct JpegHeader(HeaderOutcome Outcome, int Width, int Height, int Components, bool InPasses)
{
    /// <summary>Reads marker by marker up to the frame header, skipping over what lies between.</summary>
    public static JpegHeader Read(Stream content)
    {
        Span<byte> bytes = stackalloc byte[8];
        content.Position = 2; // Behind the start of image, which told the format
        while (true)
        {
            if (content.ReadAtLeast(bytes[..4], 4, throwOnEndOfStream: false) < 4)
            {
                return new(HeaderOutcome.CutShort, 0, 0, 0, false);
            }

            if (bytes[0] != 0xFF)
            {
                return new(HeaderOutcome.Damaged, 0, 0, 0, false);
            }

            if (bytes[1] == 0xFF)
            {
                content.Position -= 3; // Fill bytes may stand before a marker (B.1.1.2)
                continue;
            }

            var marker = bytes[1];
            var length = (bytes[2] << 8) | bytes[3];
            if (marker is < 0xC0 or 0xD8 or 0xD9 or 0xDA || length < 2)
            {
                return new(HeaderOutcome.Damaged, 0, 0, 0, false);
            }

            // C0 to CF are frame headers, but for the tables DHT, JPG and DAC
            if (marker <= 0xCF && marker is not (0xC4 or 0xC8 or 0xCC))
            {
                return Frame(content, bytes, inPasses: marker is 0xC2 or 0xC6 or 0xCA or 0xCE);
            }

            if (content.Length - content.Position < length - 2)
            {
                return new(HeaderOutcome.CutShort, 0, 0, 0, false);
            }

            content.Position += length - 2;
        }
    }

    /// <summary>Whether the passes of a picture stored in passes are all there; true of any other.</summary>
    public static bool IsWhole(SkiaSharp.SKData data)
    {
        using var content = data.AsStream();
        return !Read(content).InPasses || JpegPasses.AreComplete(data.AsSpan());
    }

    private static JpegHeader Frame(Stream content, Span<byte> bytes, bool inPasses)
    {
        if (content.ReadAtLeast(bytes[..6], 6, throwOnEndOfStream: false) < 6)
        {
            return new(HeaderOutcome.CutShort, 0, 0, 0, false);
        }

        var height = (bytes[1] << 8) | bytes[2];
        var width = (bytes[3] << 8) | bytes[4];
        return new(width > 0 && height > 0 ? HeaderOutcome.Read : HeaderOutcome.Damaged, width, height, bytes[5], inPasses);
    }
}
