using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>Reads a photo's header into facts.</summary>
internal static class PhotoHeader
{
    // The largest memory seen for each pixel: decoder planes, coefficients, and the rows handed over
    private const int PngBytesAPixel = 4;
    private const int WebPBytesAPixel = 6;
    private const int HeifBytesAPixel = 12;
    private const int RowsInFlight = 256;

    /// <summary>The facts, or why there are none. A size above the limit comes back before a decoder is asked.</summary>
    /// <param name="content">The file.</param>
    /// <param name="format">What it is.</param>
    /// <param name="limits">How large it may be.</param>
    /// <param name="withDecoder">Whether the picture library is asked too, for turn, colours, and whether it can read the file.</param>
    public static (HeaderOutcome Outcome, PhotoFacts? Facts) Read(Stream content, PhotoFormat format, PhotoLimits limits, bool withDecoder)
    {
        if (format is PhotoFormat.Heic or PhotoFormat.Avif)
        {
            return Heif(HeifHeader.Read(content), format, content.Length, withDecoder);
        }

        var (outcome, width, height, bytesAPixel, inWindows, orientation) = Measure(content, format);
        if (outcome != HeaderOutcome.Read)
        {
            return (outcome, null);
        }

        var decoded = inWindows ? bytesAPixel * SkiaRows.WindowPixels : Working(content.Length, bytesAPixel, width, height);
        var working = decoded + ((long)width * 4 * RowsInFlight);
        var facts = new PhotoFacts(format, width, height, orientation, ColourProfile.Srgb, working) { InWindows = inWindows };
        return facts.Pixels > limits.MaxPixels || !withDecoder ? (HeaderOutcome.Read, facts) : WithCodec(content, facts);
    }

    private static (HeaderOutcome Outcome, int Width, int Height, long BytesAPixel, bool InWindows, PhotoOrientation Orientation) Measure(Stream content, PhotoFormat format)
    {
        switch (format)
        {
            case PhotoFormat.Jpeg:
                var jpeg = JpegHeader.Read(content);
                return (jpeg.Outcome, jpeg.Width, jpeg.Height, jpeg.InPasses ? 2 * jpeg.Components : 0, false, PhotoOrientation.TopLeft);
            case PhotoFormat.Png:
                var png = PngHeader.Read(content);
                return (png.Outcome, png.Width, png.Height, PngBytesAPixel, !png.IsInterlaced && (long)png.Width * png.Height > SkiaRows.WindowPixels, png.Orientation);
            default:
                var webp = WebPHeader.Read(content);
                return (webp.Outcome, webp.Width, webp.Height, WebPBytesAPixel, false, PhotoOrientation.TopLeft);
        }
    }

    // Two sides of 31 bits times a few bytes pass 63 bits; such a picture is refused anyway
    private static long Working(long fileBytes, long bytesAPixel, int width, int height) =>
        (long)Math.Min(fileBytes + ((double)bytesAPixel * width * height), long.MaxValue / 4);

    private static (HeaderOutcome Outcome, PhotoFacts? Facts) WithCodec(Stream content, PhotoFacts facts)
    {
        content.Position = 0;
        using var stream = new SKManagedStream(content, disposeManagedStream: false);
        using var codec = SKCodec.Create(stream, out var result);
        if (codec is null)
        {
            return (result == SKCodecResult.IncompleteInput ? HeaderOutcome.CutShort : HeaderOutcome.Damaged, null);
        }

        var info = codec.Info;
        using var space = ColourSpaces.Of(codec);
        if (info.Width != facts.StoredWidth || info.Height != facts.StoredHeight)
        {
            return (HeaderOutcome.Damaged, null); // Two readers, two sizes: the cap would be no cap
        }

        // The codec knows the Exif of JPEG and WebP, not that of PNG
        var orientation = codec.EncodedOrigin is var origin and > SKEncodedOrigin.TopLeft and <= SKEncodedOrigin.LeftBottom
            ? (PhotoOrientation)origin
            : facts.Orientation;
        return (HeaderOutcome.Read, facts with { Orientation = orientation, Profile = ColourSpaces.Name(space) });
    }

    private static (HeaderOutcome Outcome, PhotoFacts? Facts) Heif(HeifHeader header, PhotoFormat format, long fileBytes, bool withDecoder)
    {
        if (header.Outcome != HeaderOutcome.Read)
        {
            return (header.Outcome, null);
        }

        var working = Working(fileBytes, HeifBytesAPixel, header.Width, header.Height);
        return (HeaderOutcome.Read, new(format, header.Width, header.Height, header.Orientation, withDecoder ? ProfileOf(header) : ColourProfile.Srgb, working));
    }

    private static ColourProfile ProfileOf(HeifHeader header)
    {
        using var space = ColourSpaces.Of(header);
        return ColourSpaces.Name(space);
    }
}
