using System.Text;
using CsCheck;
using ImageMagick;
using Layshaft.Site.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

public class BadPhotoTests
{
    public static TheoryData<string, string, string> NotPhotos => new()
    {
        { "a.jpg", "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>", "SVG" },
        { "a.jpg", "%PDF-1.7\n", "PDF" },
        { "a.jpg", "<!DOCTYPE html><html><body>Sign in to see this photo</body></html>", "web page" },
        { "a.jpg", "GIF89a", "GIF" },
        { "a.heic", "\0\0\0\u0018ftypmp42\0\0\0\0mp42isom", "video" },
        { "a.png", "unit: 12\n", "text" },
        { "a.jpg", "\u0001\u0002\u0003", "not a known image format" },
        { "a.jpg", "push graphic-context\nimage over 0,0 0,0 'http://a.example/'", "text" },
    };

    [Theory]
    [MemberData(nameof(NotPhotos))]
    public void What_is_no_photo_is_named(string name, string content, string named)
    {
        var (facts, problem) = Inspect(Encoding.Latin1.GetBytes(content), name);

        Assert.Null(facts);
        Assert.Equal(PhotoProblemKind.NotAPhoto, problem!.Kind);
        Assert.Contains(named, problem.Message, StringComparison.Ordinal);
        Assert.StartsWith(name, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_png_that_declares_60000_by_60000_is_refused_from_its_header()
    {
        var bomb = PngChunks.Declaring(60_000, 60_000);
        var before = GC.GetTotalAllocatedBytes(precise: true);

        var problem = Make(bomb, "a.png").Problem!;

        Assert.Equal(PhotoProblemKind.TooLarge, problem.Kind);
        Assert.Contains("60000 × 60000", problem.Message, StringComparison.Ordinal);
        Assert.True(GC.GetTotalAllocatedBytes(precise: true) - before < 1_000_000);
        Assert.Equal(PhotoProblemKind.TooLarge, Make(PngChunks.Declaring(int.MaxValue, int.MaxValue), "a.png").Problem!.Kind);
    }

    [Fact]
    public void A_png_within_the_pixels_but_not_the_memory_is_refused()
    {
        var problem = Make(PngChunks.Declaring(15_000, 16_000), "a.png", new() { MaxWorkingBytes = 70L << 20 }).Problem!;

        Assert.Equal(PhotoProblemKind.TooLarge, problem.Kind);
        Assert.Contains("memory", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_above_the_limit_and_an_empty_one_are_refused()
    {
        Assert.Equal(PhotoProblemKind.TooLarge, Make(Jpeg(), "a.jpg", new() { MaxFileBytes = 100 }).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.CutShort, Make([], "a.jpg").Problem!.Kind);
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg, 0.5)]
    [InlineData(SKEncodedImageFormat.Jpeg, 0.9)]
    [InlineData(SKEncodedImageFormat.Jpeg, 0.02)]
    [InlineData(SKEncodedImageFormat.Png, 0.5)]
    [InlineData(SKEncodedImageFormat.Png, 0.001)]
    [InlineData(SKEncodedImageFormat.Webp, 0.5)]
    public void A_photo_cut_short_is_said_to_be(SKEncodedImageFormat format, double share)
    {
        using var bitmap = Noise(400, 300);
        var photo = TestPicture.Encode(bitmap, format);
        var name = format == SKEncodedImageFormat.Jpeg ? "a.jpg" : format == SKEncodedImageFormat.Png ? "a.png" : "a.webp";

        var problem = Make(photo[..Math.Max(12, (int)(photo.Length * share))], name).Problem!;

        Assert.Equal(PhotoProblemKind.CutShort, problem.Kind);
        Assert.Contains("is incomplete", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_progressive_jpeg_cut_short_is_said_to_be()
    {
        using var bitmap = Noise(400, 300);
        using var image = new MagickImage(TestPicture.Encode(bitmap, SKEncodedImageFormat.Png));
        image.Settings.Interlace = Interlace.Jpeg;
        var photo = image.ToByteArray(MagickFormat.Jpeg);

        Assert.Null(Make(photo, "a.jpg").Problem);
        Assert.Equal(PhotoProblemKind.CutShort, Make(photo[..(photo.Length / 2)], "a.jpg").Problem!.Kind);
    }

    [Theory]
    [InlineData("turn-6.heic")]
    [InlineData("turn-6.avif")]
    public void A_heic_or_avif_cut_short_is_said_to_be(string asset)
    {
        var photo = RenditionPixels.Asset(asset);

        Assert.Equal(PhotoProblemKind.CutShort, Make(photo[..^20], asset).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.CutShort, Make(photo[..200], asset).Problem!.Kind);
    }

    [Fact]
    public void A_photo_with_another_extension_is_usable_and_its_name_is_corrected()
    {
        using var bitmap = TestPicture.Quadrants(60, 40);
        var result = Make(TestPicture.Encode(bitmap, SKEncodedImageFormat.Png), "strip-3.jpg");

        Assert.NotNull(result.Renditions);
        Assert.Equal(PhotoProblemKind.WrongExtension, result.Problem!.Kind);
        Assert.Contains("strip-3.png", result.Problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_a_problem_and_no_exception()
    {
        var path = Path.Combine(AppContext.BaseDirectory, "no-such-photo.jpg");

        Assert.Equal(PhotoProblemKind.Unreadable, PhotoFile.Inspect(path).Problem!.Kind);
        Assert.Equal(PhotoProblemKind.Unreadable, PhotoRenditions.Make(path).Problem!.Kind);
    }

    [Fact]
    public void Damaged_bytes_never_throw_and_always_give_a_photo_or_a_reason()
    {
        using var bitmap = Noise(64, 48);
        var photos = new (string Name, byte[] Bytes)[]
        {
            ("a.jpg", PlantedMetadata.InJpeg(TestPicture.Encode(bitmap))),
            ("a.png", TestPicture.Encode(bitmap, SKEncodedImageFormat.Png)),
            ("a.webp", TestPicture.Encode(bitmap, SKEncodedImageFormat.Webp)),
            ("a.heic", RenditionPixels.Asset("turn-6.heic")),
            ("a.avif", RenditionPixels.Asset("turn-6.avif")),
        };
        var limits = new PhotoLimits { MaxPixels = 1_000_000 };

        Gen.Select(Gen.Int[0, photos.Length - 1], Gen.Select(Gen.Int[0, 900], Gen.Byte).Array[1, 6]).Sample(
            (which, changes) =>
            {
                var bytes = photos[which].Bytes.ToArray();
                foreach (var (at, value) in changes)
                {
                    bytes[at % bytes.Length] = value;
                }

                var result = Make(bytes, photos[which].Name, limits);
                return (result.Renditions is null) ^ (result.Problem is null) || result.Problem!.Kind == PhotoProblemKind.WrongExtension;
            },
            iter: 300,
            threads: 1);
    }

    private static PhotoInspection Inspect(byte[] photo, string name) => PhotoFile.Inspect(new MemoryStream(photo), name);

    private static RenditionResult Make(byte[] photo, string name, PhotoLimits? limits = null) =>
        PhotoRenditions.Make(new MemoryStream(photo), name, new() { LongEdges = [100, 40] }, limits);

    private static byte[] Jpeg()
    {
        using var bitmap = TestPicture.Quadrants(60, 40);
        return TestPicture.Encode(bitmap);
    }

    private static SKBitmap Noise(int width, int height)
    {
        var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var canvas = new SKCanvas(bitmap);
        using var noise = SKShader.CreatePerlinNoiseTurbulence(0.2f, 0.2f, 4, 7);
        using var paint = new SKPaint { Shader = noise };
        canvas.Clear(SKColors.White);
        canvas.DrawPaint(paint);
        return bitmap;
    }
}
