using ImageMagick;
using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>Writes a picture as JPEG: 4:2:0, Huffman tables fitted to it, nothing but the picture in it.</summary>
internal static class JpegWriter
{
    private const string OpaqueRgba = "RGBP"; // P skips the fourth byte: a channel less to carry, a sixth of the time

    /// <summary>The file's bytes.</summary>
    public static byte[] Write(Picture picture, RenditionSettings settings) =>
        settings.Progressive && MagickLibrary.IsHere ? Progressive(picture, settings.JpegQuality) : Sequential(picture, settings.JpegQuality);

    private static byte[] Sequential(Picture picture, int quality) => picture.Pinned(pixels =>
    {
        // Without a colour space no profile is written: browsers read that as sRGB, which it is
        var info = new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var pixmap = new SKPixmap(info, pixels, info.RowBytes);
        using var data = pixmap.Encode(new SKJpegEncoderOptions(quality, SKJpegEncoderDownsample.Downsample420, SKJpegEncoderAlphaOption.Ignore));
        return data?.ToArray() ?? throw new InvalidOperationException("The JPEG encoder gave nothing.");
    });

    // The other library cannot write progressive JPEG
    private static byte[] Progressive(Picture picture, int quality)
    {
        using var image = new MagickImage();
        image.ReadPixels(picture.Bytes, new PixelReadSettings((uint)picture.Width, (uint)picture.Height, StorageType.Char, OpaqueRgba));
        image.Quality = (uint)quality;
        image.Settings.ColorType = ColorType.TrueColor; // Does not look first whether it might be grey
        image.Settings.Interlace = Interlace.Jpeg;
        image.Settings.SetDefine(MagickFormat.Jpeg, "sampling-factor", "2x2");
        image.Format = MagickFormat.Jpeg;
        return image.ToByteArray();
    }
}
