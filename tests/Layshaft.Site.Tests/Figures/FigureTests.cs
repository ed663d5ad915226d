using System.Globalization;
using CsCheck;
using Layshaft.Site.Figures;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;
using UnitsNet;

namespace Layshaft.Site.Tests.Figures;

/// <summary>How quantities are written.</summary>
public sealed class FigureTests
{
    private static readonly Texts Words = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;
    private static readonly FigureWriter Metric = new(UnitChoice.Metric, Words);
    private static readonly FigureWriter Imperial = new(UnitChoice.Imperial, Words);

    /// <summary>Narrow spaces as plain ones, so that the expectations can be read.</summary>
    private static string Plain(string text) => text.Replace('\u202F', ' ').Replace('\u00A0', ' ').Replace('\u2212', '-');

    [Theory]
    [InlineData(0.12, 2, "0.12 mm", "0.12 mm (0.0047 in)", "0.0047 in (0.12 mm)")]
    [InlineData(25.4, 2, "25.40 mm", "25.40 mm (1.0000 in)", "1.0000 in (25.40 mm)")]
    [InlineData(-0.004, 2, "0.00 mm", "0.00 mm (-0.0002 in)", "-0.0002 in (0.00 mm)")]
    [InlineData(1905, 0, "1905 mm", "1905 mm (75.00 in)", "75.00 in (1905 mm)")]
    public void Lengths(double millimetres, int decimals, string text, string both, string imperialBoth)
    {
        var value = Length.FromMillimeters(millimetres);
        Assert.Equal(text, Plain(Metric.Length(value, decimals).Text));
        Assert.Equal(both, Plain(Metric.Length(value, decimals).Both));
        Assert.Equal(imperialBoth.Replace("1905", "1,905", StringComparison.Ordinal), Plain(Imperial.Length(value, decimals).Both));
    }

    [Fact]
    public void Other_quantities_have_both_units()
    {
        Assert.Equal("201 km/h (125 mph)", Plain(Metric.Speed(Speed.FromMilesPerHour(125)).Both));
        Assert.Equal("125 mph (201 km/h)", Plain(Imperial.Speed(Speed.FromMilesPerHour(125)).Both));
        Assert.Equal("100 N·m (74 lbf·ft)", Plain(Metric.Torque(Torque.FromNewtonMeters(100)).Both)); // 1 lbf·ft = 1.3558179 N·m
        Assert.Equal("4448 N (1000 lbf)", Plain(Metric.Force(Force.FromPoundsForce(1000)).Both));
        Assert.Equal("1.361 kg (3.000 lb)", Plain(Metric.Mass(Mass.FromPounds(3), 3).Both));
        Assert.Equal("-40 °C (-40 °F)", Plain(Metric.Temperature(Temperature.FromDegreesFahrenheit(-40)).Both));
        Assert.Equal("1.79 bar (26.0 psi)", Plain(Metric.Pressure(Pressure.FromPoundsForcePerSquareInch(26)).Both));
        Assert.Equal("74.6 kW (100.0 hp)", Plain(Metric.Power(Power.FromMechanicalHorsepower(100), 1).Both));
        Assert.Equal("305 m (1000 ft)", Plain(Metric.Distance(Length.FromFeet(1000)).Both));
        Assert.Equal("1.6 km (1.0 mi)", Plain(Metric.LongDistance(Length.FromMiles(1)).Both));
    }

    [Fact]
    public void Quantities_of_one_unit_have_no_other()
    {
        Assert.Equal("9500 rpm", Plain(Metric.Rpm(RotationalSpeed.FromRevolutionsPerMinute(9500)).Both));
        Assert.Equal("12 500 rpm", Plain(Metric.Rpm(RotationalSpeed.FromRevolutionsPerMinute(12_500)).Text));
        Assert.Equal("12,500 rpm", Plain(Imperial.Rpm(RotationalSpeed.FromRevolutionsPerMinute(12_500)).Text));
        Assert.Equal("1.225 kg/m³", Plain(Metric.Density(Density.FromKilogramsPerCubicMeter(1.225)).Text));
        Assert.Equal("41.5 h", Plain(Metric.Hours(Duration.FromMinutes(2490)).Text));
        Assert.Equal("+0.18 s", Plain(Metric.Seconds(Duration.FromMilliseconds(180), withSign: true).Text));
        Assert.Equal("350 J", Plain(Metric.Energy(Energy.FromJoules(350)).Text));
        Assert.Equal("83 %", Plain(Metric.Percent(0.825).Text));
        Assert.Equal(("1.944", ""), (Metric.Number(35.0 / 18, 3).Text, Metric.Number(35.0 / 18, 3).Unit));
    }

    [Fact]
    public void A_decimal_comma_and_points_between_groups()
    {
        var figures = new FigureWriter(UnitChoice.Metric with { DecimalComma = true, Grouping = DigitGrouping.Mark }, Words);
        Assert.Equal("1.234.567,80", figures.Number(1_234_567.8, 2).Text);
        Assert.Equal("12500", new FigureWriter(UnitChoice.Metric with { Grouping = DigitGrouping.None }, Words).Number(12_500).Text);
    }

    [Theory]
    [InlineData(1.005, 2, "1.01")]
    [InlineData(-1.005, 2, "−1.01")]
    [InlineData(0.125, 2, "0.13")]
    [InlineData(2.5, 0, "3")]
    [InlineData(0.1 + 0.2, 1, "0.3")]
    [InlineData(-0.0049, 2, "0.00")]
    [InlineData(-0.0, 0, "0")]
    [InlineData(0.05, 1, "0.1")]
    [InlineData(999.995, 2, "1000.00")]
    public void A_half_is_rounded_away_from_nought_and_nought_has_no_sign(double value, int decimals, string expected) =>
        Assert.Equal(expected, Metric.Number(value, decimals).Text);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1e15)]
    public void What_no_page_should_show_is_refused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Metric.Number(value, 2));

    [Fact]
    public void A_written_number_reads_back_within_half_of_its_last_decimal() =>
        Gen.Select(Gen.Double[-1e9, 1e9], Gen.Int[0, 5]).Sample((value, decimals) =>
        {
            var back = double.Parse(Plain(Metric.Number(value, decimals).Text).Replace(" ", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
            Assert.InRange(Math.Abs(back - value), 0, (0.5 * Math.Pow(10, -decimals)) + 1e-6);
        });

    [Fact]
    public void The_threads_culture_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.Equal("−12 345.60", Metric.Number(-12_345.6, 2).Text.Replace('\u202F', ' '));
            Assert.Equal("14 March 2026", Metric.Date(new(2026, 3, 14)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Numbers_and_units_are_kept_on_one_line() => Assert.Equal("0.12\u202Fmm", Metric.Length(Length.FromMillimeters(0.12), 2).Text);

    [Fact]
    public void Teeth_dates_and_bands_in_words()
    {
        Assert.Equal(("1 tooth", "35 teeth"), (Metric.Teeth(1), Metric.Teeth(35)));
        Assert.Equal("2026-03-14", new FigureWriter(UnitChoice.Metric with { IsoDates = true }, Words).Date(new(2026, 3, 14)));
        Assert.Equal(12, Enumerable.Range(1, 12).Select(m => Metric.Date(new(2026, m, 1))).Distinct().Count());
        var (low, high) = (Metric.Length(Length.FromMillimeters(-0.1), 2), Metric.Length(Length.FromMillimeters(0.15), 2));
        Assert.Equal("-0.10 to 0.15 mm", Plain(Metric.Range(low, high)));
        Assert.Equal("-0.10 ± 0.15 mm", Plain(FigureWriter.PlusMinus(low, high)));
        Assert.Throws<ArgumentException>(() => Metric.Range(low, Metric.Number(1)));
    }

    [Theory]
    [InlineData("EUR", "1234.5", "€1234.50")]
    [InlineData("EUR", "-12345.675", "-€12 345.68")]
    [InlineData("GBP", "1234.5", "£1234.50")]
    [InlineData("USD", "1234.5", "$1234.50")]
    [InlineData("CAD", "1234.5", "CAD 1234.50")]
    [InlineData("JPY", "1234.5", "JPY 1235")]
    [InlineData("KWD", "1.2345", "KWD 1.235")]
    public void Money_has_its_currencys_decimals(string currency, string amount, string expected) =>
        Assert.Equal(expected, Plain(Metric.Money(decimal.Parse(amount, CultureInfo.InvariantCulture), currency)));

    [Theory]
    [InlineData("EUR", "1.234,00 €")]
    [InlineData("CHF", "1.234,00 CHF")]
    public void A_german_page_writes_the_sign_behind_the_amount(string currency, string expected)
    {
        var german = TextsLoader.Load(TemplateFolders.BesideProgram(), language: "de").Texts!;
        var figures = new FigureWriter(UnitChoice.Metric with { DecimalComma = true, Grouping = DigitGrouping.Mark }, german);

        Assert.Equal(expected, Plain(figures.Money(1234, currency)));
    }

    [Theory]
    [InlineData("eur")]
    [InlineData("€")]
    [InlineData("EURO")]
    public void A_currency_is_three_capital_letters(string currency) => Assert.Throws<ArgumentException>(() => Metric.Money(1, currency));
}
