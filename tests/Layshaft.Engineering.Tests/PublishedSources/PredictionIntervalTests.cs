using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Intervals about fitted lines, computed with exact rationals and mpmath; R 4.2.2 predict.lm gives the same.</summary>
public partial class PredictionIntervalTests
{
    [Theory]
    [InlineData("LM-CARS", 40)]
    [InlineData("LM-NORRIS", 40)]
    [InlineData("LM-RUBBER", 24)]
    public void Intervals_agree_with_high_precision_values(string id, int expectedCount)
    {
        var fit = FitOf(id);
        var table = PublishedTable.Read("expected_prediction_mpmath", 104);
        var rows = table.Rows.Where(row => table.Text(row, "id") == id).ToArray();
        Assert.Equal(expectedCount, rows.Length);
        foreach (var row in rows)
        {
            var quantity = table.Text(row, "quantity");
            var match = QuantityPattern().Match(quantity);
            Assert.True(match.Success, quantity);
            var kind = match.Groups[1].Value == "prediction" ? IntervalKind.NextReading : IntervalKind.MeanLine;
            var level = double.Parse(match.Groups[3].Value, CultureInfo.InvariantCulture) / 100;
            var x = double.Parse(match.Groups[4].Value, CultureInfo.InvariantCulture);
            var bounds = fit.IntervalAt(x, level, kind);
            var actual = match.Groups[2].Value == "lower" ? bounds.Lower : bounds.Upper;
            Near.Relative(table.Number(row, "exact_18_digits"), actual, 1e-10, $"{id} {quantity}");
        }
    }

    [Fact]
    public void Stopping_distance_line_agrees_with_R_lm()
    {
        var fit = FitOf("LM-CARS");
        Near.Relative(-17.579094890510895, fit.Intercept, 1e-12, "intercept");
        Near.Relative(3.9324087591240855, fit.Slope, 1e-12, "slope");
        Near.Relative(6.7584401693792335, fit.InterceptStandardError, 1e-12, "se(intercept)");
        Near.Relative(0.41551277665712222, fit.SlopeStandardError, 1e-12, "se(slope)");
        Near.Relative(1.4898364962950928e-12, fit.SlopePValue, 1e-9, "p(slope)");
        Near.Relative(0.65107938075825089, fit.RSquared, 1e-12, "R squared");
        Near.Relative(3.2355006763159517, fit.SlopeBounds(0.9).Lower, 1e-12, "slope lower 90 %");
        Near.Relative(4.76785319010785, fit.SlopeBounds(0.95).Upper, 1e-12, "slope upper 95 %");
    }

    [Theory]
    [InlineData(0.90, 27.995158679270727, 43.246947381952047)]
    [InlineData(0.95, 26.689858851069474, 45.13367676934989)]
    public void Stopping_distance_limit_is_reached_where_R_finds_it_by_root_search(double level, double earliest, double latest)
    {
        var crossing = FitOf("LM-CARS").CrossingOf(120, level, IntervalKind.NextReading)!;
        Near.Relative(34.985959832201068, crossing.Estimate, 1e-12, "estimate");
        Near.Relative(earliest, crossing.Bounds.Lower, 1e-9, "earliest");
        Near.Relative(latest, crossing.Bounds.Upper, 1e-9, "latest");
    }

    [Theory]
    [InlineData(60, 116.21243202386935, 132.71318781084139)]
    [InlineData(65, 126.53311704114731, 143.13630444645599)]
    [InlineData(80, 157.47300013206285, 174.42782631421812)]
    public void NoInt1_prediction_through_the_origin_agrees_with_R(double x, double lower, double upper)
    {
        var table = PublishedTable.Read("nist_strd_noint1", 11);
        var bounds = LinearRegression.FitThroughOrigin(table.Column("x"), table.Column("y")).IntervalAt(x, 0.95, IntervalKind.NextReading);
        Near.Relative(lower, bounds.Lower, 1e-11, "lower");
        Near.Relative(upper, bounds.Upper, 1e-11, "upper");
    }

    private static LinearFit FitOf(string id)
    {
        var (name, rows, x, y) = id switch
        {
            "LM-CARS" => ("stopping_distance", 50, "speed", "dist"),
            "LM-NORRIS" => ("nist_strd_norris", 36, "x", "y"),
            _ => ("rubber_abrasion", 30, "hard", "loss"),
        };
        var table = PublishedTable.Read(name, rows);
        return LinearRegression.Fit(table.Column(x), table.Column(y));
    }

    [GeneratedRegex(@"^(prediction|mean CI) (lower|upper) (\d+)% at x=([\d.]+)$")]
    private static partial Regex QuantityPattern();
}
