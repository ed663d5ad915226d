using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

/// <summary>A picture with another colour in each corner, so that every wrong turn shows.</summary>
internal static class TestPicture
{
    public static readonly SKColor TopLeft = new(200, 40, 40);
    public static readonly SKColor TopRight = new(40, 160, 40);
    public static readonly SKColor BottomLeft = new(40, 60, 200);
    public static readonly SKColor BottomRight = new(220, 210, 60);

    public static SKBitmap Quadrants(int width, int height, SKColorSpace? space = null)
    {
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque, space));
        Fill(bitmap, (x, y) => y < height / 2
            ? (x < width / 2 ? TopLeft : TopRight)
            : (x < width / 2 ? BottomLeft : BottomRight));
        return bitmap;
    }

    public static SKBitmap Flat(int width, int height, SKColor colour, SKColorSpace? space = null, SKAlphaType alpha = SKAlphaType.Opaque)
    {
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, alpha, space));
        Fill(bitmap, (_, _) => colour);
        return bitmap;
    }

    /// <summary>
    /// The picture as a camera stores it under an orientation, by the words of the tag (TIFF 6.0, tag 274): which side of
    /// the upright picture stored row 0 is, and which side stored column 0 is.
    /// </summary>
    public static SKBitmap StoredAs(SKBitmap upright, int orientation)
    {
        var (row0, column0) = orientation switch
        {
            1 => ("top", "left"),
            2 => ("top", "right"),
            3 => ("bottom", "right"),
            4 => ("bottom", "left"),
            5 => ("left", "top"),
            6 => ("right", "top"),
            7 => ("right", "bottom"),
            _ => ("left", "bottom"),
        };
        var rowsAcross = row0 is "left" or "right";
        int w = upright.Width, h = upright.Height;
        var stored = new SKBitmap(new SKImageInfo(rowsAcross ? h : w, rowsAcross ? w : h, SKColorType.Rgba8888, SKAlphaType.Opaque, upright.ColorSpace));
        for (var row = 0; row < stored.Height; row++)
        {
            for (var column = 0; column < stored.Width; column++)
            {
                var x = Along(rowsAcross ? row0 : column0, "left", rowsAcross ? row : column, w);
                var y = Along(rowsAcross ? column0 : row0, "top", rowsAcross ? column : row, h);
                stored.SetPixel(column, row, upright.GetPixel(x, y));
            }
        }

        return stored;
    }

    public static byte[] Encode(SKBitmap bitmap, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg, int quality = 95)
    {
        using var data = bitmap.Encode(format, quality);
        return data.ToArray();
    }

    private static int Along(string side, string near, int index, int length) => side == near ? index : length - 1 - index;

    private static void Fill(SKBitmap bitmap, Func<int, int, SKColor> colour)
    {
        for (var y = 0; y < bitmap.Height; y++)
        {
            for (var x = 0; x < bitmap.Width; x++)
            {
                bitmap.SetPixel(x, y, colour(x, y));
            }
        }
    }
}
