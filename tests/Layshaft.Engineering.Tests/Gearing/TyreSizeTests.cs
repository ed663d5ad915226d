using CsCheck;
using Layshaft.Engineering.Gearing;

namespace Layshaft.Engineering.Tests.Gearing;

public class TyreSizeTests
{
    [Theory]
    [InlineData("205/55R16 91V", TyreSizeForm.Metric, 205, 16, 91, "V", true)]
    [InlineData(" 205/55 ZR 16 ", TyreSizeForm.Metric, 205, 16, null, "ZR", true)]
    [InlineData("205/55ZR16 91W", TyreSizeForm.Metric, 205, 16, 91, "W", true)]
    [InlineData("205/55ZR16 (91Y) XL", TyreSizeForm.Metric, 205, 16, 91, "(Y)", true)]
    [InlineData("P205/65R15 92H", TyreSizeForm.PassengerMetric, 205, 15, 92, "H", true)]
    [InlineData("LT235/85R16 120/116R", TyreSizeForm.LightTruckMetric, 235, 16, 120, "R", true)]
    [InlineData("225/55-16", TyreSizeForm.Metric, 225, 16, null, null, false)]
    [InlineData("200/530R13", TyreSizeForm.RacingMetric, 200, 13, null, null, true)]
    public void Metric_codes_are_read(string code, TyreSizeForm form, int widthMm, int rim, int? load, string? symbol, bool radial)
    {
        TyreSize size = TyreSize.Parse(code).Require();
        Assert.Equal(form, size.Form);
        Assert.Equal(widthMm, size.SectionWidth.Millimeters, 5e-10);
        Assert.Equal(rim, size.RimDiameter.Inches, 5e-10);
        Assert.Equal(load, size.LoadIndex);
        Assert.Equal(symbol, size.SpeedSymbol?.Symbol);
        Assert.Equal(radial, size.IsRadial);
    }

    [Theory]
    [InlineData("22.0x8.0-13")]
    [InlineData("22.0 x 8.0 - 13")]
    [InlineData("8.0/22.0-13")]
    [InlineData("8/22.0R13")]
    public void Racing_codes_in_inches_give_the_same_tyre_in_either_order(string code)
    {
        TyreSize size = TyreSize.Parse(code).Require();
        Assert.Equal(TyreSizeForm.RacingInch, size.Form);
        Assert.Equal(22, size.NominalDiameter.Inches, 5e-10);
        Assert.Equal(8, size.SectionWidth.Inches, 5e-10);
        Assert.Equal(13, size.RimDiameter.Inches, 5e-10);
        Assert.Null(size.DesignDiameter);
        Assert.Equal(CircumferenceBasis.NominalDiameter, RollingTyre.FromSize(size).Require().Basis);
    }

    [Fact]
    public void A_metric_racing_code_gives_its_diameter() =>
        Assert.Equal(530, TyreSize.Parse("200/530R13").Require().NominalDiameter.Millimeters, 5e-10);

    [Theory]
    [InlineData("", "205/55R16")]
    [InlineData("205-55R16", "write a size such as")]
    [InlineData("205/55R16 91", "write a size such as")]
    [InlineData("205/55R16 91X", "speed symbol X")]
    [InlineData("205/55R16 (91Y", "one bracket")]
    [InlineData("205/55R16 999V", "load index 999")]
    [InlineData("205/55R99", "8 to 24 inches")]
    [InlineData("205/300R16", "aspect ratio (20 to 95)")]
    [InlineData("200/300R13", "400 to 900")]
    [InlineData("999/55R16", "section width 999")]
    [InlineData("12.0x8.0-13", "diameter above the rim")]
    [InlineData("205/55R16 and more", "write a size such as")]
    [InlineData("٢٠٥/55R16", "write a size such as")]
    public void What_cannot_be_read_gets_a_reason(string code, string expected)
    {
        Assert.False(TyreSize.TryParse(code, out TyreSize? size, out string? reason));
        Assert.Null(size);
        Assert.Contains(expected, reason, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_throws_and_every_size_read_has_a_diameter_above_its_rim() => Gen.OneOf(
            Gen.String,
            Gen.Select(Gen.Int[0, 999], Gen.Int[0, 999], Gen.Int[0, 30], (w, a, r) => $"{w}/{a}R{r}"),
            Gen.Select(Gen.Double[0, 45], Gen.Double[0, 25], Gen.Int[0, 30], (d, w, r) => FormattableString.Invariant($"{d:0.0}x{w:0.0}-{r}")))
        .Sample(text =>
        {
            if (TyreSize.Parse(text).TryGet(out TyreSize? size))
            {
                Assert.True(size.NominalDiameter > size.RimDiameter);
                Assert.True(RollingTyre.FromSize(size).Require().Circumference.Meters > 0);
            }
        });

    [Theory]
    [InlineData("L", 120)]
    [InlineData("H", 210)]
    [InlineData("V", 240)]
    [InlineData("Y", 300)]
    public void A_symbol_stands_for_a_speed(string symbol, int kmPerHour)
    {
        SpeedSymbol found = SpeedSymbol.Find(symbol)!;
        Assert.Equal(kmPerHour, found.Limit.KilometersPerHour, 5e-10);
        Assert.False(found.IsOpenEnded);
        Assert.Null(SpeedSymbol.Find("X"));
    }
}
