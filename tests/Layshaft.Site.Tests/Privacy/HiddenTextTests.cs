using System.Text;
using Layshaft.Site.Tests.Photos;

namespace Layshaft.Site.Tests.Privacy;

/// <summary>The search finds a planted word however it is written; else the tests that use it would show nothing.</summary>
public class HiddenTextTests
{
    private const string Word = "plantedw0007<ö&zq";

    public static TheoryData<string, byte[]> Writings => new()
    {
        { "plain", Encoding.UTF8.GetBytes($"a {Word} b") },
        { "other case", Encoding.UTF8.GetBytes($"a {Word.ToUpperInvariant()} b") },
        { "html", "a plantedw0007&lt;&#246;&amp;zq b"u8.ToArray() },
        { "html twice", "a plantedw0007&amp;lt;ö&amp;amp;zq b"u8.ToArray() },
        { "json", "{\"a\": \"plantedw0007\\u003c\\u00f6\\u0026zq\"}"u8.ToArray() },
        { "percent", "?subject=plantedw0007%3C%C3%B6%26zq"u8.ToArray() },
        { "percent in html", "?a=1&amp;b=plantedw0007%3C%c3%b6%26zq"u8.ToArray() },
        { "css", "content: \"plantedw0007\\3c \\f6 \\26 zq\""u8.ToArray() },
        { "utf-16", Encoding.Unicode.GetBytes($"ab{Word}") },
        { "utf-16 at an odd place", [7, .. Encoding.Unicode.GetBytes(Word)] },
        { "utf-16 big endian", Encoding.BigEndianUnicode.GetBytes(Word) },
        { "data address", Encoding.ASCII.GetBytes($"src=\"data:image/png;base64,{Convert.ToBase64String(Encoding.UTF8.GetBytes($"## {Word} ##"))}\"") },
        { "amount", "it costs 1,007.37"u8.ToArray() },
        { "amount with a thin space", "it costs 1\u202F007.37"u8.ToArray() },
    };

    [Theory]
    [MemberData(nameof(Writings))]
    public void A_word_is_found_however_it_is_written(string writing, byte[] bytes)
    {
        Assert.NotEmpty(writing);
        Assert.Contains(7, HiddenText.In("page.html", bytes).SelectMany(Planting.In));
        Assert.DoesNotContain(8, HiddenText.In("page.html", bytes).SelectMany(Planting.In));
    }

    [Fact]
    public void A_word_is_found_in_a_name_and_in_what_a_picture_carries()
    {
        Assert.Contains(7, HiddenText.In("customers/plantedw0007zq-400.jpg", Array.Empty<byte>()).SelectMany(Planting.In));
        using var bitmap = TestPicture.Quadrants(32, 32);
        var picture = PlantedMetadata.InJpeg(TestPicture.Encode(bitmap), word: "plantedw0007zq");
        Assert.Contains(7, HiddenText.In("a.jpg", picture).SelectMany(Planting.In));
        var inside = Encoding.ASCII.GetBytes($"data:image/jpeg;base64,{Convert.ToBase64String(picture)}");
        Assert.Contains(7, HiddenText.In("a.html", inside).SelectMany(Planting.In));
    }
}
