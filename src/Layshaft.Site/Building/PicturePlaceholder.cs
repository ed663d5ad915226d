using SkiaSharp;

namespace Layshaft.Site.Building;

/// <summary>
/// Stands where a picture was promised whose file turned out to be damaged while it was decoded: a plain field with a
/// cross, so that the page keeps its shape and nobody takes it for a photo.
/// </summary>
internal static class PicturePlaceholder
{
    public static ReadOnlyMemory<byte> Jpeg((int Width, int Height) size)
    {
        using var bitmap = new SKBitmap(size.Width, size.Height, SKColorType.Rgb888x, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(new SKColor(0xE4, 0xE1, 0xD8));
        using var pen = new SKPaint { Color = new SKColor(0x8A, 0x86, 0x7C), StrokeWidth = 3, IsAntialias = false };
        canvas.DrawLine(0, 0, size.Width, size.Height, pen);
        canvas.DrawLine(0, size.Height, size.Width, 0, pen);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 80);
        return data.ToArray();
    }
}
