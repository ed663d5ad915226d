using ImageMagick;
using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>Rows of a HEIC or AVIF picture, which its decoder has already turned upright.</summary>
/// <remarks>
/// The decoder follows the rotation and mirror properties of the file and no Exif, as ISO/IEC 23008-12 has it.
/// </remarks>
internal sealed class HeifRows : DecodedRows
{
    private const int Band = 16;
    private readonly MagickImage _image;
    private readonly IPixelCollection<byte> _pixels;
    private readonly int _channels;
    private byte[] _band = [];
    private int _bandTop;

    private HeifRows(MagickImage image, SKColorSpace? space)
    {
        (_image, Space) = (image, space);
        _pixels = image.GetPixels();
        _channels = (int)_pixels.Channels;
    }

    public override int Width => (int)_image.Width;

    public override int Height => (int)_image.Height;

    public override int FullWidth => Width; // Cropped, where the file asks for it

    public override int FullHeight => Height;

    public override PhotoOrientation Orientation => PhotoOrientation.TopLeft;

    public override SKColorSpace? Space { get; }

    /// <summary>Decodes the primary picture; null if that fails or gives more pixels than the header said.</summary>
    public static HeifRows? Open(SKData data, PhotoFacts facts)
    {
        using var content = data.AsStream();
        var header = HeifHeader.Read(content);
        var format = facts.Format == PhotoFormat.Avif ? MagickFormat.Avif : MagickFormat.Heic;
        var image = new MagickImage();
        try
        {
            image.Read(data.AsSpan(), new MagickReadSettings { Format = format, FrameIndex = 0, FrameCount = 1 });
            if ((long)image.Width * image.Height <= facts.Pixels)
            {
                image.ColorSpace = ColorSpace.sRGB; // A grey picture comes with one channel otherwise
                return new(image, ColourSpaces.Of(header));
            }
        }
        catch (MagickException)
        {
            // Damaged data, whatever the decoder calls it
        }

        image.Dispose();
        return null;
    }

    public override bool Next(Span<byte> row)
    {
        if (RowsRead == Height)
        {
            return false;
        }

        if (RowsRead % Band == 0)
        {
            _bandTop = RowsRead;
            _band = _pixels.GetArea(0, _bandTop, (uint)Width, (uint)Math.Min(Band, Height - _bandTop)) ?? [];
        }

        Expand(_band.AsSpan((RowsRead - _bandTop) * Width * _channels, Width * _channels), row);
        RowsRead++;
        return true;
    }

    public override void Dispose()
    {
        _pixels.Dispose();
        _image.Dispose();
        Space?.Dispose();
    }

    private void Expand(ReadOnlySpan<byte> stored, Span<byte> row)
    {
        var colours = _channels >= 3 ? 3 : 1;
        var hasAlpha = _channels is 2 or 4;
        for (int from = 0, to = 0; to < row.Length; from += _channels, to += Picture.PixelBytes)
        {
            var alpha = hasAlpha ? stored[from + colours] : 255;
            for (var c = 0; c < 3; c++)
            {
                var value = stored[from + (colours == 3 ? c : 0)];
                row[to + c] = (byte)(((value * alpha) + (255 * (255 - alpha)) + 127) / 255);
            }

            row[to + 3] = 255;
        }
    }
}
