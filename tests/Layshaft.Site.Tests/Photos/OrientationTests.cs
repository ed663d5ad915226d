using Layshaft.Site.Photos;
using SkiaSharp;
using static Layshaft.Site.Tests.Photos.RenditionPixels;

namespace Layshaft.Site.Tests.Photos;

public class OrientationTests
{
    private static readonly RenditionSettings Small = new() { LongEdges = [96, 48] };

    public static TheoryData<int> AllEight => [1, 2, 3, 4, 5, 6, 7, 8];

    [Theory]
    [MemberData(nameof(AllEight))]
    public void A_jpeg_stands_upright_whatever_its_orientation(int orientation)
    {
        using var upright = TestPicture.Quadrants(192, 128);
        using var stored = TestPicture.StoredAs(upright, orientation);
        var photo = PlantedMetadata.InJpeg(TestPicture.Encode(stored), orientation);

        var made = Make(photo, "a.jpg", Small);

        Assert.Equal((PhotoOrientation)orientation, made.Facts.Orientation);
        Assert.Equal((192, 128), (made.Facts.UprightWidth, made.Facts.UprightHeight));
        Assert.Equal([(96, 64), (48, 32)], made.Sizes.Select(s => (s.Width, s.Height)));
        HasUprightQuadrants(made);
    }

    [Theory]
    [MemberData(nameof(AllEight))]
    public void A_png_and_a_webp_stand_upright_too(int orientation)
    {
        using var upright = TestPicture.Quadrants(192, 128);
        using var stored = TestPicture.StoredAs(upright, orientation);
        var png = PlantedMetadata.InPng(TestPicture.Encode(stored, SKEncodedImageFormat.Png), orientation);
        var webp = PlantedMetadata.InWebP(TestPicture.Encode(stored, SKEncodedImageFormat.Webp), stored.Width, stored.Height, orientation);

        HasUprightQuadrants(Make(png, "a.png", Small));
        HasUprightQuadrants(Make(webp, "a.webp", Small));
    }

    [Theory]
    [MemberData(nameof(AllEight))]
    public void A_heic_stands_upright_by_its_own_properties(int orientation)
    {
        var made = Make(Asset($"turn-{orientation}.heic"), "a.heic", Small);

        Assert.Equal(PhotoFormat.Heic, made.Facts.Format);
        Assert.Equal((PhotoOrientation)orientation, made.Facts.Orientation);
        Assert.Equal((96, 64), (made.Facts.UprightWidth, made.Facts.UprightHeight));
        Assert.Equal([(96, 64), (48, 32)], made.Sizes.Select(s => (s.Width, s.Height)));
        HasUprightQuadrants(made);
    }

    [Fact]
    public void An_avif_stands_upright_by_its_own_properties()
    {
        var made = Make(Asset("turn-6.avif"), "a.avif", Small);

        Assert.Equal((PhotoFormat.Avif, PhotoOrientation.RightTop), (made.Facts.Format, made.Facts.Orientation));
        HasUprightQuadrants(made);
    }

    [Fact]
    public void Exif_alone_does_not_turn_a_heic()
    {
        // ISO/IEC 23008-12: the item properties say how to show it, Exif only informs. Stored on its side: 64 × 96.
        var made = Make(Asset("exif-6-only.heic"), "a.heic", Small);

        Assert.Equal((64, 96), (made.Facts.UprightWidth, made.Facts.UprightHeight));
        Assert.Equal((64, 96), (made.Sizes[0].Width, made.Sizes[0].Height));
    }

    [Theory]
    [MemberData(nameof(AllEight))]
    public void Turning_agrees_with_the_words_of_the_tag_pixel_by_pixel(int orientation)
    {
        using var upright = new SKBitmap(new SKImageInfo(71, 40, SKColorType.Rgba8888, SKAlphaType.Opaque));
        for (var i = 0; i < 71 * 40; i++)
        {
            upright.SetPixel(i % 71, i / 71, new SKColor((uint)(0xFF000000 | (i * 5923))));
        }

        using var stored = TestPicture.StoredAs(upright, orientation);
        using var picture = new Picture(stored.Width, stored.Height);
        stored.GetPixelSpan().CopyTo(picture.Bytes);
        using var turned = PictureTurn.Upright(picture, (PhotoOrientation)orientation);

        Assert.Equal((71, 40), (turned.Width, turned.Height));
        Assert.True(turned.Bytes.SequenceEqual(upright.GetPixelSpan()));
    }
}
