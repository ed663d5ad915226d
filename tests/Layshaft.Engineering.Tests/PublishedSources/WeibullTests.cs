using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Weibull by maximum likelihood: NIST/SEMATECH e-Handbook of Statistical Methods (doi 10.18434/M32189), 8.4.1.3 (read),
/// and values computed with mpmath 1.2.1 in 40 digits that R 4.2.2 survival 3.5-3 survreg gives as well.
/// </summary>
public class WeibullTests
{
    [Theory]
    [InlineData("NIST500", 20, 10)]
    [InlineData("AML", 23, 18)]
    [InlineData("AMLM", 11, 7)]
    [InlineData("AMLN", 12, 11)]
    [InlineData("OVARIAN", 26, 12)]
    [InlineData("KM8215", 20, 6)]
    public void Every_quantity_agrees_with_high_precision_values(string dataset, int units, int failures)
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(SurvivalData.Sample(dataset)));
        Assert.Equal(units, fit.Units);
        Assert.Equal(failures, fit.Failures);
        var table = PublishedTable.Read("expected_weibull_mpmath", 228);
        var rows = table.Rows.Where(row => table.Text(row, "dataset") == dataset).ToArray();
        Assert.Equal(38, rows.Length);
        foreach (var row in rows)
        {
            var quantity = table.Text(row, "quantity");
            var tolerance = quantity.Contains("profile", StringComparison.Ordinal) ? 1e-10 : 1e-11;
            Near.Relative(table.Number(row, "mpmath_18_digits"), Value(fit, quantity), tolerance, $"{dataset} {quantity}");
        }
    }

    [Fact]
    public void Handbook_example_8_4_1_3_gives_the_printed_results()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(SurvivalData.Sample("NIST500")));
        Assert.Equal(606.5280, fit.Scale, 5e-4); // the page prints 606.5280, the exact maximum is 606.52756
        Assert.Equal(1.7208, fit.Shape, 5e-5);
        Assert.Equal(-75.135, fit.LogLikelihood, 5e-4);
        Assert.Equal(154.27, 2 * 2 - 2 * fit.LogLikelihood, 5e-3);
        Assert.Equal(540.737, fit.MeanLife, 5e-4);
        Assert.Equal(323.806, fit.StandardDeviationOfLife, 5e-4);
    }

    private static double? Value(WeibullFit fit, string quantity)
    {
        var level = quantity.Contains("90%", StringComparison.Ordinal) ? 0.90 : 0.95;
        var share = quantity.Contains("B50", StringComparison.Ordinal) ? 0.5 : 0.1;
        var words = quantity.Split(' ');
        if (words.Length > 3 && words[1] is "lower" or "upper")
        {
            var profile = quantity.Contains("profile", StringComparison.Ordinal);
            var bounds = words[0] switch
            {
                "eta" => fit.ScaleDeltaBounds(level),
                "beta" => profile ? fit.ShapeBounds(level) : fit.ShapeDeltaBounds(level),
                _ => profile ? fit.LifeBounds(share, level, forFewFailures: false) : fit.LifeDeltaBounds(share, level),
            };
            return words[1] == "lower" ? bounds.Lower : bounds.Upper;
        }

        return quantity switch
        {
            "shape beta" => fit.Shape,
            "scale eta" => fit.Scale,
            "log-likelihood" => fit.LogLikelihood,
            "se(log eta)=se(mu)" => Math.Sqrt(fit.Covariance.LogScaleVariance),
            "se(log beta)=se(log sigma)" => Math.Sqrt(fit.Covariance.LogShapeVariance),
            "cov(mu,log sigma)" => fit.Covariance.LogScaleLogSigma,
            "se(eta)" => fit.ScaleStandardError,
            "se(beta)" => fit.ShapeStandardError,
            "B10" or "B50" => fit.LifeAt(share),
            "se(log B10)" or "se(log B50)" => fit.LogLifeStandardError(share),
            "se(B10) delta" or "se(B50) delta" => fit.LifeAt(share) * fit.LogLifeStandardError(share),
            "mean life eta*Gamma(1+1/beta)" => fit.MeanLife,
            "sd of life" => fit.StandardDeviationOfLife,
            _ => throw new ArgumentException(quantity),
        };
    }
}
