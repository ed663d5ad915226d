using Layshaft.Site.Photos;
using MathNet.Numerics.LinearAlgebra;
using SkiaSharp;
using static Layshaft.Site.Tests.Photos.RenditionPixels;

namespace Layshaft.Site.Tests.Photos;

public class ColourTests
{
    // Chromaticities of red, green, blue: IEC 61966-2-1 and SMPTE RP 431-2 with the D65 white point of both spaces
    private static readonly Matrix<double> FromSrgb = ToXyz((0.64, 0.33), (0.30, 0.60), (0.15, 0.06));
    private static readonly Matrix<double> FromP3 = ToXyz((0.680, 0.320), (0.265, 0.690), (0.150, 0.060));

    [Theory]
    [InlineData(234, 51, 35)]
    [InlineData(120, 180, 90)]
    [InlineData(90, 90, 90)]
    [InlineData(60, 100, 170)]
    public void Display_p3_becomes_srgb(byte red, byte green, byte blue)
    {
        using var p3 = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        using var flat = TestPicture.Flat(128, 96, new SKColor(red, green, blue), p3);
        var expected = Converted(red, green, blue);

        foreach (var (format, name) in new[] { (SKEncodedImageFormat.Jpeg, "a.jpg"), (SKEncodedImageFormat.Png, "a.png") })
        {
            var made = Make(TestPicture.Encode(flat, format), name, new() { LongEdges = [64] });

            Assert.Equal(ColourProfile.DisplayP3, made.Facts.Profile);
            using var bitmap = Decode(made.Sizes[0]);
            Near(expected, At(bitmap, 0.5, 0.5), tolerance: 3);
        }
    }

    [Fact]
    public void A_heic_in_display_p3_becomes_srgb()
    {
        var made = Make(Asset("display-p3.heic"), "a.heic", new() { LongEdges = [32] });

        Assert.Equal(ColourProfile.DisplayP3, made.Facts.Profile);
        using var bitmap = Decode(made.Sizes[0]);
        Near(Converted(234, 51, 35), At(bitmap, 0.5, 0.5), tolerance: 6); // HEVC has its own rounding
    }

    [Fact]
    public void A_photo_in_srgb_keeps_its_colours()
    {
        using var flat = TestPicture.Flat(128, 96, new SKColor(200, 100, 50));
        var made = Make(TestPicture.Encode(flat), "a.jpg", new() { LongEdges = [64] });

        Assert.Equal(ColourProfile.Srgb, made.Facts.Profile);
        using var bitmap = Decode(made.Sizes[0]);
        Near(new SKColor(200, 100, 50), At(bitmap, 0.5, 0.5), tolerance: 2);
        Near(new SKColor(200, 100, 50), SKColor.Parse(made.AverageColour), tolerance: 2);
    }

    [Fact]
    public void The_average_colour_weighs_all_parts_alike()
    {
        using var quadrants = TestPicture.Quadrants(128, 96);

        // The means of the four corners' red, green and blue
        Near(new SKColor(125, 118, 85), SKColor.Parse(Make(TestPicture.Encode(quadrants), "a.jpg").AverageColour), tolerance: 2);
    }

    [Theory]
    [InlineData(0, 255, 255, 255)]
    [InlineData(128, 227, 177, 152)]
    public void What_is_transparent_lies_on_white(byte alpha, byte red, byte green, byte blue)
    {
        using var glass = TestPicture.Flat(64, 48, new SKColor(200, 100, 50, alpha), alpha: SKAlphaType.Unpremul);

        foreach (var (format, name) in new[] { (SKEncodedImageFormat.Png, "a.png"), (SKEncodedImageFormat.Webp, "a.webp") })
        {
            using var bitmap = Decode(Make(TestPicture.Encode(glass, format, 100), name, new() { LongEdges = [32] }).Sizes[0]);
            Near(new SKColor(red, green, blue), At(bitmap, 0.5, 0.5), tolerance: 3);
        }
    }

    private static SKColor Converted(byte red, byte green, byte blue)
    {
        var linear = Vector<double>.Build.Dense([Linear(red), Linear(green), Linear(blue)]);
        var srgb = FromSrgb.Inverse() * FromP3 * linear;
        return new(Encoded(srgb[0]), Encoded(srgb[1]), Encoded(srgb[2]));
    }

    private static Matrix<double> ToXyz((double X, double Y) red, (double X, double Y) green, (double X, double Y) blue)
    {
        static double[] Xyz((double X, double Y) p) => [p.X / p.Y, 1, (1 - p.X - p.Y) / p.Y];
        var primaries = Matrix<double>.Build.DenseOfColumnArrays(Xyz(red), Xyz(green), Xyz(blue));
        var white = Vector<double>.Build.Dense(Xyz((0.3127, 0.3290)));
        return primaries * Matrix<double>.Build.DenseOfDiagonalVector(primaries.Solve(white));
    }

    // The transfer function of IEC 61966-2-1, which Display P3 shares
    private static double Linear(byte value) => value / 255.0 is var v && v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);

    private static byte Encoded(double linear)
    {
        var v = Math.Clamp(linear, 0, 1);
        return (byte)Math.Round(255 * (v <= 0.0031308 ? 12.92 * v : (1.055 * Math.Pow(v, 1 / 2.4)) - 0.055));
    }
}
