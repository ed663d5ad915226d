using CsCheck;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Tests;

public class ValueTests
{
    [Theory]
    [InlineData("29/23", 23, 29)]
    [InlineData("25 / 28", 28, 25)]
    public void Two_gears_are_written_driven_over_driver(string text, int driver, int driven) =>
        Assert.Equal(new Teeth(driver, driven), Teeth.Parse(text).Value);

    [Theory]
    [InlineData("23 driving 29", "Write driven/driver: 29/23.")]
    [InlineData("23 drives 29", "Write driven/driver: 29/23.")]
    [InlineData("29 driven by 23", "Write driven/driver: 29/23.")]
    [InlineData("29:23", null)]
    public void Two_gears_in_words_are_refused_with_what_to_write(string text, string? remedy)
    {
        var pair = Teeth.Parse(text);

        Assert.Equal($"'{text}' is not a pair of gears.", pair.Wrong);
        Assert.Equal(remedy, pair.Remedy);
    }

    [Theory]
    [InlineData("29/023", "023")]
    [InlineData("29", "pair")]
    [InlineData("-29/23", "-29")]
    [InlineData("29/3", "3 teeth")]
    [InlineData("29/23/28", "pair")]
    [InlineData("29.5/23", "29.5")]
    public void A_pair_that_cannot_be_is_refused(string text, string said) =>
        Assert.Contains(said, Teeth.Parse(text).Wrong, StringComparison.Ordinal);

    [Theory]
    [InlineData("undercut lost")]
    [InlineData("Undercut worn")]
    public void Worn_undercut_is_asked_for_as_back_cut(string condition)
    {
        var read = Books.SmallWith("jobs/2026/0001/job.yaml", t => t.Replace("rounded dogs", condition, StringComparison.Ordinal));

        Assert.Equal("Did you mean 'back-cut worn'?", Assert.Single(read.Problems).Remedy);
    }

    [Theory]
    [InlineData("0.05 mm to 0.10 mm", 0.05, 0.10)]
    [InlineData("0.05 to 0.10 mm", 0.05, 0.10)]
    [InlineData("2 thou to 4 thou", 0.0508, 0.1016)]
    [InlineData("0.05–0.10 mm", 0.05, 0.10)]
    public void A_band_can_be_written_as_people_do(string text, double low, double high)
    {
        var band = BandText.Parse(text);

        Assert.Null(band.Wrong);
        Assert.Equal(low, ((Length)band.Value!.Low!).Millimeters, 5e-10);
        Assert.Equal(high, ((Length)band.Value!.High!).Millimeters, 5e-10);
    }

    [Theory]
    [InlineData("0.10 mm to 0.05 mm")]
    [InlineData("0.05 mm to 3 N·m")]
    [InlineData("about 0.05 mm")]
    [InlineData("to 0.05 mm")]
    public void A_band_that_cannot_be_is_refused(string text) => Assert.NotNull(BandText.Parse(text).Wrong);

    [Theory]
    [InlineData("March to October", 3, 10)]
    [InlineData("october to march", 10, 3)]
    [InlineData("June to June", 6, 6)]
    public void A_season_is_written_as_its_first_and_last_month(string text, int first, int last) =>
        Assert.Equal(new Engineering.Life.SeasonCalendar(first, last), SeasonText.Parse(text).Value);

    [Theory]
    [InlineData("March", "two months")]
    [InlineData("March-October", "two months")]
    [InlineData("Mar to October", "'Mar'")]
    [InlineData("3 to 10", "'3'")]
    [InlineData("March to October to May", "two months")]
    public void Anything_else_is_no_season(string text, string said) =>
        Assert.Contains(said, SeasonText.Parse(text).Wrong, StringComparison.Ordinal);

    [Theory]
    [InlineData("1e3")]
    [InlineData("NaN")]
    [InlineData("1,5")]
    [InlineData("0x10")]
    [InlineData("007")]
    [InlineData("1_000")]
    [InlineData("12:30")]
    [InlineData(".5")]
    [InlineData("5.")]
    [InlineData("")]
    [InlineData("--5")]
    [InlineData("9999999999999999999999999999999999")]
    public void A_number_with_a_trick_in_it_is_refused(string text) => Assert.NotNull(Figure.Parse(text).Wrong);

    [Fact]
    public void Any_decimal_number_comes_back_as_written() => Gen.Int[-1_000_000, 1_000_000].Select(Gen.Int[0, 4]).Sample((whole, decimals) =>
    {
        var value = whole / (decimal)Math.Pow(10, decimals);
        Assert.Equal(value, Figure.ParseExact(value.ToString(System.Globalization.CultureInfo.InvariantCulture)).Value);
    });

    [Fact]
    public void Any_pair_comes_back_from_its_words() =>
        Gen.Int[Teeth.Fewest, Teeth.Most].Select(Gen.Int[Teeth.Fewest, Teeth.Most]).Sample((driver, driven) =>
            Assert.Equal(new Teeth(driver, driven), Teeth.Parse(new Teeth(driver, driven).ToString()).Value));

    [Fact]
    public void No_text_makes_a_reader_of_values_throw() => Gen.String.Sample(text =>
    {
        _ = UnitWords.Measured.Parse(text);
        _ = BandText.Parse(text);
        _ = Teeth.Parse(text);
        _ = Use.Parse(text);
        _ = CalendarSpan.Parse(text);
        _ = Figure.ParseExact(text);
    });
}
