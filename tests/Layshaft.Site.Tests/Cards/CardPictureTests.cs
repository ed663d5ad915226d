using System.Buffers.Binary;
using System.Text;
using Layshaft.Site.Cards;
using Layshaft.Site.Charts;
using Layshaft.Site.Look;
using Layshaft.Site.Tests.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Cards;

/// <summary>The picture that messengers show.</summary>
public class CardPictureTests
{
    private static readonly CardView Usual = new(
        "Fell Bench",
        Rgb.Parse("#1f4e5f"),
        "T6-022 · Ostrel T6",
        "Report on job 0615",
        "Third gear's dogs had lost their undercut; ring and gear are new and the box is as it should be.",
        [
            new(new GradeMark(GradeShape.Circle, "S", "Serviceable"), "Serviceable", "9 parts"),
            new(new GradeMark(GradeShape.Triangle, "M", "Monitor"), "Monitor", "2 parts"),
            new(new GradeMark(GradeShape.Square, "R", "Renew"), "Renew", "1 part"),
        ]);

    [Fact]
    public void It_is_a_picture_of_the_usual_size_for_previews_and_not_heavy()
    {
        var png = CardPicture.Png(Usual);
        using var bitmap = SKBitmap.Decode(png.Span);

        Assert.Equal((1200, 630), (bitmap.Width, bitmap.Height));
        Assert.InRange(png.Length, 5_000, 150_000);
        Assert.Equal(new SKColor(0x1F, 0x4E, 0x5F), bitmap.GetPixel(600, 4));
    }

    [Fact]
    public void It_has_a_palette_and_nothing_beside_it()
    {
        var png = CardPicture.Png(Usual).ToArray();
        var chunks = new List<(string Name, int Length)>();
        for (var at = 8; at < png.Length; at += 12 + chunks[^1].Length)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            chunks.Add((Encoding.ASCII.GetString(png, at + 4, 4), length));
            Assert.Equal(PngChunks.Chunk(chunks[^1].Name, png[(at + 8)..(at + 8 + length)]), png[at..(at + 12 + length)]);
        }

        Assert.Equal(["IHDR", "PLTE", "IDAT", "IEND"], chunks.Select(c => c.Name).Distinct());
        Assert.Equal((8, 3), (png[24], png[25])); // bits, colour type
        using var bitmap = SKBitmap.Decode(png);
        Assert.Equal(chunks[1].Length, 3 * bitmap.Pixels.Distinct().Count());
    }

    [Fact]
    public void The_same_words_give_the_same_bytes() => Assert.Equal(CardPicture.Png(Usual).ToArray(), CardPicture.Png(Usual with { }).ToArray());

    // A font that cannot be read draws nothing and says nothing: so each part must leave ink where it belongs.
    [Theory]
    [InlineData(60, 100)]
    [InlineData(115, 150)]
    [InlineData(170, 215)]
    [InlineData(262, 330)]
    [InlineData(525, 585)]
    public void Each_line_is_drawn(int top, int bottom)
    {
        using var bitmap = SKBitmap.Decode(CardPicture.Png(Usual).Span);
        Assert.InRange(Ink(bitmap, top, bottom), 300, 60_000);
    }

    [Fact]
    public void Each_word_matters()
    {
        CardView[] others =
        [
            Usual with { Shop = "Other" }, Usual with { Unit = "Other" }, Usual with { Heading = "Other" }, Usual with { Words = "Other" },
            Usual with { Colour = Rgb.Parse("#702020") }, Usual with { Grades = [] }, Usual with { Grades = [Usual.Grades[0] with { Words = "8 parts" }] },
        ];
        Assert.Equal(others.Length + 1, others.Append(Usual).Select(c => Convert.ToHexString(CardPicture.Png(c).Span)).Distinct().Count());
    }

    [Theory]
    [InlineData("Łódź, Dvořák, Şişli")]
    [InlineData("ギア 🏁 \u200Fx")]
    [InlineData("e\u0301te\u0301")]
    [InlineData("")]
    public void Any_words_can_be_drawn(string words)
    {
        using var bitmap = SKBitmap.Decode(CardPicture.Png(Usual with { Words = words, Unit = words, Shop = words }).Span);
        Assert.Equal(1200, bitmap.Width);
    }

    [Fact]
    public void Accented_letters_beyond_western_europe_are_drawn_and_not_replaced()
    {
        using var font = new CardFont(bold: false, 40);
        Assert.NotEqual(font.Measure("????"), font.Measure("łşřő"));
        Assert.Equal(font.Measure("?"), font.Measure("ギ"));
        Assert.Equal(font.Measure("été"), font.Measure("e\u0301te\u0301"));
    }

    [Fact]
    public void A_long_sentence_stays_within_the_picture_and_ends_in_an_ellipsis()
    {
        var lines = CardLines.Break(string.Join(' ', Enumerable.Repeat("undercut", 60)), 100, 3, t => t.Length * 5);

        Assert.Equal(3, lines.Count);
        Assert.All(lines, l => Assert.True(l.Length * 5 <= 100));
        Assert.EndsWith("…", lines[^1], StringComparison.Ordinal);
        Assert.Equal(["one two", "three"], CardLines.Break(" one  two three ", 40, 3, t => t.Length * 5));
        Assert.Equal(["aaaaaaa…"], CardLines.Break(new string('a', 50), 40, 3, t => t.Length * 5));
        Assert.Empty(CardLines.Break(" ", 40, 3, t => t.Length * 5));

        using var bitmap = SKBitmap.Decode(CardPicture.Png(Usual with { Words = string.Join(' ', Enumerable.Repeat("undercut", 200)) }).Span);
        Assert.All(Enumerable.Range(18, bitmap.Height - 18), y => Assert.Equal(bitmap.GetPixel(1199, 300), bitmap.GetPixel(1199, y)));
    }

    private static int Ink(SKBitmap bitmap, int top, int bottom)
    {
        var paper = bitmap.GetPixel(5, 300);
        return Enumerable.Range(top, bottom - top).Sum(y => Enumerable.Range(0, bitmap.Width).Count(x => bitmap.GetPixel(x, y) != paper));
    }
}
