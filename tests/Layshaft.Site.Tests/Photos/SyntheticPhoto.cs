using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

/// <summary>A made-up photo: grain and shading at all scales with sharp edges laid over, the same for the same number.</summary>
internal static class SyntheticPhoto
{
    public static byte[] Jpeg(int width, int height, int number, int quality = 92)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(new SKColor(120, 125, 130));
        var scale = 4032f / width;
        using (var grain = SKShader.CreatePerlinNoiseFractalNoise(0.004f * scale, 0.005f * scale, 8, number))
        using (var paint = new SKPaint { Shader = grain })
        {
            canvas.DrawPaint(paint);
        }

        var random = new Random(number);
        for (var i = 0; i < 300; i++)
        {
            var colour = new SKColor((byte)random.Next(256), (byte)random.Next(256), (byte)random.Next(256), 150);
            using var paint = new SKPaint { IsAntialias = true, Color = colour, StrokeWidth = random.Next(2, 20) / scale };
            paint.Style = i % 3 == 0 ? SKPaintStyle.Fill : SKPaintStyle.Stroke;
            canvas.DrawCircle(random.Next(width), random.Next(height), random.Next(5, 220) / scale, paint);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, quality);
        return data.ToArray();
    }
}
