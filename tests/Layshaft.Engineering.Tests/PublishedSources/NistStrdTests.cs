using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Certified values of the NIST Statistical Reference Datasets, https://www.itl.nist.gov/div898/strd/ (read from a copy
/// of the NIST files).
/// </summary>
public class NistStrdTests
{
    [Fact]
    public void Norris_line_agrees_with_the_certified_values()
    {
        var table = PublishedTable.Read("nist_strd_norris", 36);
        var fit = LinearRegression.Fit(table.Column("x"), table.Column("y"));
        Near.Relative(-0.262323073774029, fit.Intercept, 1e-11, "B0");
        Near.Relative(1.00211681802045, fit.Slope, 1e-14, "B1");
        Near.Relative(0.232818234301152, fit.InterceptStandardError, 1e-12, "sd(B0)");
        Near.Relative(0.429796848199937E-03, fit.SlopeStandardError, 1e-12, "sd(B1)");
        Near.Relative(0.884796396144373, fit.ResidualStandardDeviation, 1e-12, "residual sd");
        Near.Relative(0.999993745883712, fit.RSquared, 1e-14, "R squared");
        Near.Relative(4255954.13232369, fit.RegressionSumOfSquares, 1e-13, "regression sum of squares");
        Near.Relative(26.6173985294224, fit.ResidualSumOfSquares, 1e-12, "residual sum of squares");
        Near.Relative(5436385.54079785, fit.FStatistic, 1e-12, "F");
        Assert.Equal(34, fit.DegreesOfFreedom);
    }

    [Theory]
    [InlineData("nist_strd_noint1", 11, 2.07438016528926, 0.165289256198347E-01, 3.56753034006338, 0.999365492298663, 10)]
    [InlineData("nist_strd_noint2", 3, 0.727272727272727, 0.420827318078432E-01, 0.369274472937998, 0.993348115299335, 2)]
    public void Line_through_the_origin_agrees_with_the_certified_values(
        string name, int rows, double slope, double slopeError, double residualSd, double rSquared, int freedom)
    {
        var table = PublishedTable.Read(name, rows);
        var fit = LinearRegression.FitThroughOrigin(table.Column("x"), table.Column("y"));
        Near.Relative(slope, fit.Slope, 1e-14, "B1");
        Near.Relative(slopeError, fit.SlopeStandardError, 1e-13, "sd(B1)");
        Near.Relative(residualSd, fit.ResidualStandardDeviation, 1e-13, "residual sd");
        Near.Relative(rSquared, fit.RSquared, 1e-14, "R squared");
        Assert.Equal(freedom, fit.DegreesOfFreedom);
        Assert.Null(fit.InterceptStandardError);
    }

    [Fact]
    public void NoInt1_has_the_certified_F_and_residual_sum_of_squares()
    {
        var table = PublishedTable.Read("nist_strd_noint1", 11);
        var fit = LinearRegression.FitThroughOrigin(table.Column("x"), table.Column("y"));
        Near.Relative(15750.25, fit.FStatistic, 1e-13, "F");
        Near.Relative(127.272727272727, fit.ResidualSumOfSquares, 1e-13, "residual sum of squares");
    }

    // NumAcc3: 0.1 steps at a million are not exact in binary, which alone moves s by 1e-9 of itself.
    [Theory]
    [InlineData("numacc1", 3, 10000002, 1, 0, 0)]
    [InlineData("numacc2", 1001, 1.2, 0.1, 1e-14, 1e-12)]
    [InlineData("numacc3", 1001, 1000000.2, 0.1, 1e-14, 1e-8)]
    [InlineData("michelso", 100, 299.852400000000, 0.0790105478190518, 1e-14, 1e-11)]
    [InlineData("mavro", 50, 2.00185600000000, 0.000429123454003053, 1e-14, 1e-10)]
    [InlineData("lottery", 218, 518.958715596330, 291.699727470969, 1e-13, 1e-13)]
    public void Mean_and_standard_deviation_agree_with_the_certified_values(
        string name, int rows, double mean, double deviation, double meanTolerance, double deviationTolerance)
    {
        var summary = SampleSummary.Of(PublishedTable.Read("nist_strd_" + name, rows).Column("y"));
        Near.Relative(mean, summary.Mean, meanTolerance, "mean");
        Near.Relative(deviation, summary.StandardDeviation, deviationTolerance, "standard deviation");
        Assert.Equal(rows, summary.Count);
    }

    /// <summary>NIST Technical Note 1900 (2015), example E2; data and printed results from memory.</summary>
    [Fact]
    public void Temperatures_of_NIST_TN_1900_example_E2_give_the_printed_results()
    {
        var table = PublishedTable.Read("nist_tn1900_e2_temperature", 22);
        var summary = SampleSummary.Of(table.Column("t_degC"));
        var standardUncertainty = summary.StandardDeviation!.Value / Math.Sqrt(summary.Count);
        Assert.Equal(25.59, summary.Mean, 0.005);
        Assert.Equal(0.872, standardUncertainty, 0.0005);
        var half = Quantiles.StudentT(0.975, 21) * standardUncertainty;
        Assert.Equal(23.8, summary.Mean - half, 0.05);
        Assert.Equal(27.4, summary.Mean + half, 0.05);
    }
}
