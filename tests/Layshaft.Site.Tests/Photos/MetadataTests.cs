using System.Text;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Icc;
using MetadataExtractor.Formats.Iptc;
using MetadataExtractor.Formats.Xmp;
using SkiaSharp;
using static Layshaft.Site.Tests.Photos.RenditionPixels;

namespace Layshaft.Site.Tests.Photos;

public class MetadataTests
{
    public static TheoryData<string> Photos => ["a.jpg", "a.png", "a.webp", "a.heic"];

    [Theory]
    [MemberData(nameof(Photos))]
    public void No_metadata_reach_a_rendition(string name)
    {
        var photo = Planted(name);
        Assert.True(Holds(photo, PlantedMetadata.Word), "the word must be in the original, or this test shows nothing");

        foreach (var progressive in new[] { true, false })
        {
            var made = Make(photo, name, new() { LongEdges = [64, 32], Progressive = progressive });

            Assert.Equal(2, made.Sizes.Count);
            foreach (var size in made.Sizes)
            {
                var bytes = size.Jpeg.ToArray();
                Assert.False(Holds(bytes, PlantedMetadata.Word));
                Assert.False(Holds(bytes, "Exif\0") || Holds(bytes, "http://ns.adobe.com") || Holds(bytes, "Photoshop") || Holds(bytes, "ICC_PROFILE"));
                Assert.DoesNotContain(ImageMetadataReader.ReadMetadata(new MemoryStream(bytes)), d => d is ExifDirectoryBase or XmpDirectory or IptcDirectory or IccDirectory);
                Assert.Equal([], Markers(bytes).Where(m => m is 0xFE or > 0xE0 and <= 0xEF).ToList());
            }
        }
    }

    [Fact]
    public void The_planted_place_is_one_that_a_reader_finds()
    {
        var found = ImageMetadataReader.ReadMetadata(new MemoryStream(Planted("a.jpg")));

        var gps = Assert.Single(found.OfType<GpsDirectory>());
        Assert.Equal("S", gps.GetString(GpsDirectory.TagLatitudeRef));
        Assert.Equal(PlantedMetadata.Word, Assert.Single(found.OfType<IptcDirectory>()).GetString(IptcDirectory.TagCaption));
        Assert.Single(found.OfType<XmpDirectory>());
    }

    [Fact]
    public void No_profile_is_left_in_a_rendition_of_a_wide_gamut_photo()
    {
        using var p3 = SKColorSpace.CreateRgb(SKColorSpaceTransferFn.Srgb, SKColorSpaceXyz.DisplayP3);
        using var flat = TestPicture.Flat(64, 64, SKColors.Teal, p3);
        var photo = TestPicture.Encode(flat);
        Assert.True(Holds(photo, "ICC_PROFILE"));

        Assert.All(Make(photo, "a.jpg", new() { Progressive = false }).Sizes, s => Assert.False(Holds(s.Jpeg.ToArray(), "ICC_PROFILE")));
        Assert.All(Make(photo, "a.jpg").Sizes, s => Assert.False(Holds(s.Jpeg.ToArray(), "ICC_PROFILE")));
    }

    private static byte[] Planted(string name)
    {
        using var bitmap = TestPicture.Quadrants(96, 64);
        return name switch
        {
            "a.jpg" => PlantedMetadata.InJpeg(TestPicture.Encode(bitmap)),
            "a.png" => PlantedMetadata.InPng(TestPicture.Encode(bitmap, SKEncodedImageFormat.Png)),
            "a.webp" => PlantedMetadata.InWebP(TestPicture.Encode(bitmap, SKEncodedImageFormat.Webp), 96, 64),
            _ => Asset("exif-6-only.heic"),
        };
    }

    private static bool Holds(byte[] bytes, string word) => bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(word)) >= 0;

    // The markers before the first scan
    private static IEnumerable<byte> Markers(byte[] jpeg)
    {
        for (var at = 2; jpeg[at + 1] != 0xDA; at += 2 + (jpeg[at + 2] << 8) + jpeg[at + 3])
        {
            yield return jpeg[at + 1];
        }
    }
}
