using ImageMagick;
using SkiaSharp;
using static Layshaft.Site.Tests.Photos.RenditionPixels;

namespace Layshaft.Site.Tests.Photos;

public class QualityTests
{
    // What the reference itself keeps when saved at quality 80 is about this much; the decoder's own shrink may cost 0.005
    private const double MostThatShrinkingMayCost = 0.005;

    [Theory]
    [InlineData(2016, 1512, 800, 240)]
    [InlineData(1600, 1200, 1600, 480)]
    [InlineData(1500, 1000, 1400, 500)]
    [InlineData(1000, 1500, 500, 250)]
    public void Renditions_look_like_a_full_decode_shrunk_by_another_library(int width, int height, int large, int small)
    {
        var photo = SyntheticPhoto.Jpeg(width, height, number: 11);

        foreach (var size in Make(photo, "a.jpg", new() { LongEdges = [large, small] }).Sizes)
        {
            using var reference = new MagickImage(photo) { FilterType = FilterType.Lanczos };
            reference.Resize(new MagickGeometry((uint)size.Width, (uint)size.Height) { IgnoreAspectRatio = true });
            var wanted = reference.GetPixels().ToByteArray(PixelMapping.RGBA)!;

            reference.Quality = 80;
            reference.Settings.SetDefine(MagickFormat.Jpeg, "sampling-factor", "2x2");
            using var saved = SKBitmap.Decode(reference.ToByteArray(MagickFormat.Jpeg));
            using var made = Decode(size);

            var kept = StructuralSimilarity.Of(wanted, Rgba(made), size.Width, size.Height);
            var keptBySaving = StructuralSimilarity.Of(wanted, Rgba(saved), size.Width, size.Height);
            Assert.True(kept >= keptBySaving - MostThatShrinkingMayCost, $"{size.Width}: {kept:F4} against {keptBySaving:F4}");
            Assert.True(kept > 0.9, $"{size.Width}: {kept:F4}");
        }
    }

    [Fact]
    public void Likeness_is_one_for_the_same_picture_and_falls_with_noise()
    {
        var random = new Random(3);
        var a = new byte[64 * 64 * 4];
        random.NextBytes(a);
        var b = a.Select(v => (byte)Math.Clamp(v + random.Next(-40, 41), 0, 255)).ToArray();

        Assert.Equal(1, StructuralSimilarity.Of(a, a, 64, 64), 5e-7);
        Assert.InRange(StructuralSimilarity.Of(a, b, 64, 64), 0.5, 0.99);
    }

    private static byte[] Rgba(SKBitmap bitmap)
    {
        using var copy = bitmap.Copy(SKColorType.Rgba8888);
        return copy.GetPixelSpan().ToArray();
    }
}
