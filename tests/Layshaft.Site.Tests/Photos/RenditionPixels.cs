using Layshaft.Site.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

/// <summary>Makes renditions in tests and looks at their pixels.</summary>
internal static class RenditionPixels
{
    public static PhotoRenditions Make(byte[] photo, string name, RenditionSettings? settings = null)
    {
        using var content = new MemoryStream(photo);
        var result = PhotoRenditions.Make(content, name, settings);
        Assert.Null(result.Problem);
        return result.Renditions!;
    }

    public static SKBitmap Decode(Rendition rendition) => SKBitmap.Decode(rendition.Jpeg.Span);

    public static byte[] Asset(string name) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Photos", "Assets", name));

    public static void HasUprightQuadrants(PhotoRenditions renditions)
    {
        foreach (var size in renditions.Sizes)
        {
            using var bitmap = Decode(size);
            Assert.Equal((size.Width, size.Height), (bitmap.Width, bitmap.Height));
            Near(TestPicture.TopLeft, At(bitmap, 0.25, 0.25));
            Near(TestPicture.TopRight, At(bitmap, 0.75, 0.25));
            Near(TestPicture.BottomLeft, At(bitmap, 0.25, 0.75));
            Near(TestPicture.BottomRight, At(bitmap, 0.75, 0.75));
        }
    }

    public static SKColor At(SKBitmap bitmap, double x, double y) => bitmap.GetPixel((int)(x * bitmap.Width), (int)(y * bitmap.Height));

    public static void Near(SKColor expected, SKColor actual, int tolerance = 8)
    {
        var worst = new[] { expected.Red - actual.Red, expected.Green - actual.Green, expected.Blue - actual.Blue }.Max(Math.Abs);
        Assert.True(worst <= tolerance, $"expected {expected}, found {actual}");
    }
}
