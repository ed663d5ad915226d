using Layshaft.Site.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

/// <summary>What keeps the memory of large photos bounded.</summary>
public class LargePhotoTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(64)]
    [InlineData(200)]
    public void A_png_decoded_some_rows_at_a_time_gives_the_same_rows(int rowsAtOnce)
    {
        using var bitmap = new SKBitmap(130, 200, SKColorType.Rgba8888, SKAlphaType.Unpremul);
        for (var at = 0; at < bitmap.Width * bitmap.Height; at++)
        {
            bitmap.SetPixel(at % bitmap.Width, at / bitmap.Width, new SKColor((byte)(at % 256), (byte)(at / 7 % 256), (byte)(at / 90 % 256), (byte)(at / 30 % 256)));
        }

        var file = TestPicture.Encode(bitmap, SKEncodedImageFormat.Png);
        using var content = new MemoryStream(file);
        var facts = PhotoFile.Inspect(content, "a.png").Facts!;
        using var data = SKData.CreateCopy(file);
        using var whole = SkiaRows.Open(data, facts, 130, 200)!;
        using var parts = SkiaRows.Open(content, facts, rowsAtOnce * 130)!;
        byte[] expected = new byte[130 * 4], row = new byte[130 * 4];
        for (var y = 0; y < 200; y++)
        {
            Assert.True(whole.Next(expected) && parts.Next(row));
            Assert.Equal(expected, row);
        }

        Assert.False(parts.Next(row));
    }

    [Fact]
    public void A_png_cut_short_ends_early_when_it_is_decoded_some_rows_at_a_time()
    {
        using var bitmap = TestPicture.Quadrants(130, 200);
        var file = TestPicture.Encode(bitmap, SKEncodedImageFormat.Png);
        using var content = new MemoryStream(file);
        var facts = PhotoFile.Inspect(content, "a.png").Facts!;
        using var half = new MemoryStream(file[..(file.Length / 2)]);
        using var rows = SkiaRows.Open(half, facts, 10 * 130)!;
        var row = new byte[130 * 4];
        while (rows.Next(row))
        {
        }

        Assert.InRange(rows.RowsRead, 0, 199);
    }

    [Fact]
    public void A_large_png_needs_no_more_memory_than_one_of_sixteen_megapixels()
    {
        static long Working(int side)
        {
            using var content = new MemoryStream(PngChunks.Declaring(side, side));
            return PhotoFile.InspectHead(content, "a.png").Facts!.WorkingBytes;
        }

        Assert.Equal(4L * SkiaRows.WindowPixels, Working(10_000) - (10_000L * 4 * 256));
        Assert.InRange(Working(15_000), 0, 90L << 20);
    }

    [Fact]
    public void Photos_decoded_at_the_same_moment_share_one_budget_and_each_gets_its_turn()
    {
        var budget = new DecodeBudget(100);
        var (taken, most, done) = (0L, 0L, 0);
        Thread[] threads = [.. Enumerable.Range(0, 8).Select(t => new Thread(() =>
        {
            for (var i = 0; i < 200; i++)
            {
                // Small ones, and now and then one larger than all there is.
                using var share = budget.Take(i % 50 == 7 ? 1000 : 10 + t);
                var now = Interlocked.Add(ref taken, share.Bytes);
                InterlockedMax(ref most, now);
                Thread.Yield();
                Interlocked.Add(ref taken, -share.Bytes);
            }

            Interlocked.Increment(ref done);
        }) { IsBackground = true })];
        Array.ForEach(threads, t => t.Start());
        Assert.All(threads, t => Assert.True(t.Join(TimeSpan.FromMinutes(1)), "It waits for ever."));
        Assert.Equal(threads.Length, done);
        Assert.InRange(most, 20, 100);
    }

    private static void InterlockedMax(ref long most, long now)
    {
        for (var was = Interlocked.Read(ref most); now > was; was = Interlocked.Read(ref most))
        {
            Interlocked.CompareExchange(ref most, now, was);
        }
    }
}
