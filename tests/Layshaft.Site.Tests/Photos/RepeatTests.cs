using System.Globalization;
using Layshaft.Site.Photos;
using SkiaSharp;
using static Layshaft.Site.Tests.Photos.RenditionPixels;

namespace Layshaft.Site.Tests.Photos;

public class RepeatTests
{
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Every_culture_gives_the_same_bytes(string culture)
    {
        var photo = SyntheticPhoto.Jpeg(800, 600, 1);
        var before = CultureInfo.CurrentCulture;
        var expected = Make(photo, "a.jpg");
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Same(expected, Make(photo, "a.jpg"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_thread_or_four_give_the_same_bytes(bool progressive)
    {
        using var folder = new TempFolder();
        var paths = Files(folder);
        var settings = new RenditionSettings { LongEdges = [500, 150], Progressive = progressive };
        PhotoRenditions[] alone = [.. paths.Select(p => PhotoRenditions.Make(p, settings).Renditions!)];

        var together = new PhotoRenditions[paths.Count];
        Parallel.For(0, paths.Count, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i => together[i] = PhotoRenditions.Make(paths[i], settings).Renditions!);

        for (var i = 0; i < paths.Count; i++)
        {
            Same(alone[i], together[i]);
        }
    }

    [Fact]
    public void A_missing_photo_is_a_problem_and_no_exception()
    {
        using var folder = new TempFolder();

        Assert.Equal(PhotoProblemKind.Unreadable, PhotoRenditions.Make(Path.Combine(folder.Path, "missing.jpg"), new() { LongEdges = [100] }).Problem!.Kind);
    }

    [Fact]
    public void A_photo_is_never_enlarged_and_sizes_are_not_repeated()
    {
        using var small = TestPicture.Quadrants(300, 200);

        Assert.Equal([(300, 200)], Make(TestPicture.Encode(small), "a.jpg").Sizes.Select(s => (s.Width, s.Height)));
        Assert.Equal([(300, 200), (100, 67)], Make(TestPicture.Encode(small), "a.jpg", new() { LongEdges = [100, 1600] }).Sizes.Select(s => (s.Width, s.Height)));
        Assert.Equal([(1, 1)], Make(TestPicture.Encode(TestPicture.Flat(1, 1, SKColors.Red)), "a.jpg").Sizes.Select(s => (s.Width, s.Height)));
        Assert.Equal([(100, 1)], Make(TestPicture.Encode(TestPicture.Flat(900, 2, SKColors.Red)), "a.jpg", new() { LongEdges = [100] }).Sizes.Select(s => (s.Width, s.Height)));
    }

    [Fact]
    public void Sizes_foretold_are_the_sizes_made()
    {
        foreach (var (width, height, orientation) in new[] { (300, 200, 1), (301, 177, 6), (90, 40, 5), (50, 700, 8), (900, 2, 3) })
        {
            using var bitmap = TestPicture.Quadrants(width, height);
            var settings = new RenditionSettings { LongEdges = [40, 100] };
            var made = Make(PlantedMetadata.InJpeg(TestPicture.Encode(bitmap), orientation), "a.jpg", settings);

            Assert.Equal(made.Sizes.Select(s => (s.Width, s.Height)), PhotoRenditions.SizesOf(made.Facts, settings));
        }
    }

    [Fact]
    public void Progressive_is_what_the_settings_say()
    {
        var photo = SyntheticPhoto.Jpeg(400, 300, 1);

        Assert.True(IsProgressive(Make(photo, "a.jpg").Sizes[0]));
        Assert.False(IsProgressive(Make(photo, "a.jpg", new() { Progressive = false }).Sizes[0]));
        Assert.Throws<ArgumentException>(() => Make(photo, "a.jpg", new() { LongEdges = [] }));
        Assert.Throws<ArgumentException>(() => Make(photo, "a.jpg", new() { JpegQuality = 101 }));
    }

    private static bool IsProgressive(Rendition rendition) => JpegHeader.Read(new MemoryStream(rendition.Jpeg.ToArray())).InPasses;

    private static List<string> Files(TempFolder folder)
    {
        var paths = new List<string>();
        for (var i = 0; i < 6; i++)
        {
            paths.Add(Path.Combine(folder.Path, $"{i}.jpg"));
            File.WriteAllBytes(paths[^1], PlantedMetadata.InJpeg(SyntheticPhoto.Jpeg(900, 700, i), 1 + i));
        }

        paths.Add(Path.Combine(folder.Path, "turned.heic"));
        File.WriteAllBytes(paths[^1], Asset("turn-5.heic"));
        return paths;
    }

    private static void Same(PhotoRenditions expected, PhotoRenditions actual)
    {
        Assert.Equal((expected.Facts, expected.AverageColour), (actual.Facts, actual.AverageColour));
        Assert.Equal(expected.Sizes.Count, actual.Sizes.Count);
        foreach (var (a, b) in expected.Sizes.Zip(actual.Sizes))
        {
            Assert.Equal((a.Width, a.Height), (b.Width, b.Height));
            Assert.True(a.Jpeg.Span.SequenceEqual(b.Jpeg.Span));
        }
    }
}
