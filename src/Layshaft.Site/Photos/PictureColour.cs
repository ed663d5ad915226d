using SkiaSharp;

namespace Layshaft.Site.Photos;

/// <summary>Colour work on small pictures.</summary>
internal static class PictureColour
{
    /// <summary>The picture in sRGB; the same object if it already is.</summary>
    public static Picture ToSrgb(Picture picture, SKColorSpace? space)
    {
        if (space is null || space.IsSrgb)
        {
            return picture;
        }

        var converted = new Picture(picture.Width, picture.Height);
        var info = new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Opaque, space);
        picture.Pinned(from => converted.Pinned(to =>
        {
            using var pixels = new SKPixmap(info, from, info.RowBytes);
            return pixels.ReadPixels(info.WithColorSpace(ColourSpaces.Srgb), to, info.RowBytes);
        }));
        return converted;
    }

    /// <summary>The mean of the stored sRGB values, as <c>#rrggbb</c>: what the picture looks like scaled to one pixel.</summary>
    public static string Average(Picture picture)
    {
        var bytes = picture.Bytes;
        long red = 0, green = 0, blue = 0, count = bytes.Length / Picture.PixelBytes;
        for (var at = 0; at < bytes.Length; at += Picture.PixelBytes)
        {
            red += bytes[at];
            green += bytes[at + 1];
            blue += bytes[at + 2];
        }

        return $"#{Mean(red, count):x2}{Mean(green, count):x2}{Mean(blue, count):x2}";
    }

    private static byte Mean(long sum, long count) => (byte)((sum + (count / 2)) / count);
}
