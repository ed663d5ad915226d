using CsCheck;
using Layshaft.Book.Values;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;
using UnitsNet;

namespace Layshaft.Site.Tests.Figures;

/// <summary>A size keeps the digits that it was written with, in whichever unit it is shown.</summary>
public class WrittenDigitsTests
{
    // One N·m is 0.74 lbf·ft: units of one size get as many decimals, so a last digit may stand for a little more than was written.
    private const double Coarsest = 1.5;

    private static readonly string[] s_units = ["mm", "in", "thou", "N·m", "lbf·ft", "lbf·in", "N", "lbf", "kgf"];

    private static readonly Texts Words = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;
    private static readonly FigureWriter Metric = new(UnitChoice.Metric, Words);
    private static readonly FigureWriter Imperial = new(UnitChoice.Imperial, Words);
    private static readonly FigureWriter Thou = new(UnitChoice.Imperial with { Thousandths = true }, Words);

    [Theory]
    [InlineData("78 lbf·ft", "106 N·m", "78 lbf·ft", "78 lbf·ft")]
    [InlineData("170 N·m", "170 N·m", "125 lbf·ft", "125 lbf·ft")]
    [InlineData("0.234 in", "5.94 mm", "0.234 in", "234 thou")]
    [InlineData("4.7 thou", "0.119 mm", "0.0047 in", "4.7 thou")]
    [InlineData("2 thou", "0.05 mm", "0.002 in", "2 thou")]
    [InlineData("0.35 mm", "0.35 mm", "0.0138 in", "13.8 thou")]
    [InlineData("32.418 mm", "32.418 mm", "1.27630 in", "1276.30 thou")]
    [InlineData("1 in", "25 mm", "1 in", "1 in")]
    [InlineData("12 lbf·in", "1.4 N·m", "1.0 lbf·ft", "1.0 lbf·ft")]
    [InlineData("20 lbf", "89 N", "20 lbf", "20 lbf")]
    [InlineData("5°", "5°", "5°", "5°")]
    public void A_size_is_shown_with_the_digits_it_was_written_with(string written, string metric, string imperial, string thou)
    {
        var size = UnitWords.Measured.Parse(written).Value!;

        Assert.Equal((metric, imperial, thou), (Text(size, Metric), Text(size, Imperial), Text(size, Thou)));
    }

    [Fact]
    public void A_shown_size_reads_back_within_half_a_digit_and_has_no_digit_finer_than_was_written() =>
        Gen.Select(Gen.Int[1, 99_999], Gen.Int[0, 3], Gen.Int[0, s_units.Length - 1], Gen.Bool).Sample((digits, decimals, which, metric) =>
        {
            var unit = s_units[which];
            var written = (double)(digits / (decimal)Math.Pow(10, decimals));
            var word = UnitWords.Measured.Units.First(u => u.Word == unit);
            var (size, step) = (word.Make(written), word.Make(Math.Pow(10, -Written(digits, decimals))).InSi());
            var shown = Measured.Figure(size, Measured.DecimalsWritten(size), metric ? Metric : Imperial);

            var point = shown.Number.IndexOf('.', StringComparison.Ordinal);
            var shownDecimals = point < 0 ? 0 : shown.Number.Length - point - 1;
            var shownUnit = UnitWords.Measured.Units.First(u => u.Word == shown.Unit);
            var last = shownUnit.Make(Math.Pow(10, -shownDecimals)).InSi();
            var number = double.Parse(string.Concat(shown.Number.Where(c => c is not ('\u202F' or ','))), System.Globalization.CultureInfo.InvariantCulture);

            Assert.True(Math.Abs(shownUnit.Make(number).InSi() - size.InSi()) <= (0.5 + 1e-6) * last, $"{written} {unit} became {shown}");
            Assert.True(last <= (Coarsest + 1e-6) * step || shownDecimals == (metric || shown.Unit != "in" ? 4 : 6), $"{written} {unit} became {shown}, which is too coarse");
            Assert.True(shownDecimals == 0 || last * 10 > Coarsest * step * (1 - 1e-6), $"{written} {unit} became {shown}, which is too fine");
        });

    // Decimals without the noughts at their end, which a quantity does not keep.
    private static int Written(int digits, int decimals)
    {
        for (; decimals > 0 && digits % 10 == 0; decimals--)
        {
            digits /= 10;
        }

        return decimals;
    }

    private static string Text(IQuantity size, FigureWriter figures) => Measured.Figure(size, Measured.DecimalsWritten(size), figures).Text.Replace('\u202F', ' ').Replace(",", string.Empty, StringComparison.Ordinal);
}
