using CsCheck;
using Layshaft.Site.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

/// <summary>A file that is cut short or changed is doubted without being decoded; one that is whole never is.</summary>
public class PhotoEndTests
{
    private static readonly byte[] Small = Encoded(300, 200, SKEncodedImageFormat.Jpeg);
    private static readonly byte[] Large = SyntheticPhoto.Jpeg(1600, 1200, 7);
    private static readonly byte[] Png = Encoded(300, 200, SKEncodedImageFormat.Png);

    [Fact]
    public void A_whole_picture_is_never_doubted()
    {
        Assert.True(Large.Length > 256 * 1024);
        Assert.True(LooksWhole(Small, PhotoFormat.Jpeg));
        Assert.True(LooksWhole(Large, PhotoFormat.Jpeg));
        Assert.True(LooksWhole([.. Large, .. new byte[1000]], PhotoFormat.Jpeg));
        Assert.True(LooksWhole(Png, PhotoFormat.Png));
        Assert.True(LooksWhole(PngChunks.Declaring(4, 4), PhotoFormat.Png));
    }

    [Fact]
    public void A_picture_cut_anywhere_is_doubted() => Gen.Select(Gen.Int[0, 2], Gen.Double[0.1, 0.999]).Sample((which, share) =>
    {
        var (whole, format) = which switch { 0 => (Small, PhotoFormat.Jpeg), 1 => (Large, PhotoFormat.Jpeg), _ => (Png, PhotoFormat.Png) };
        return !LooksWhole(whole[..(int)(whole.Length * share)], format);
    });

    [Fact]
    public void A_picture_whose_end_was_overwritten_with_nothing_is_doubted()
    {
        byte[] empty = [.. Large[..(Large.Length / 2)], .. new byte[Large.Length / 2]];

        Assert.False(LooksWhole(empty, PhotoFormat.Jpeg));
    }

    [Fact]
    public void A_changed_byte_of_a_png_is_doubted() => Gen.Select(Gen.Int[8, Png.Length - 1], Gen.Byte[1, 255]).Sample((at, by) =>
    {
        var changed = Png.ToArray();
        changed[at] ^= by;
        return !LooksWhole(changed, PhotoFormat.Png);
    });

    private static bool LooksWhole(byte[] photo, PhotoFormat format) => PhotoEnd.LooksWhole(new MemoryStream(photo), format);

    private static byte[] Encoded(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = TestPicture.Quadrants(width, height);
        return TestPicture.Encode(bitmap, format);
    }
}
