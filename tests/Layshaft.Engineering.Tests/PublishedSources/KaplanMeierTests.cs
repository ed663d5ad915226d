using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// NIST/SEMATECH e-Handbook of Statistical Methods (doi 10.18434/M32189), 8.2.1.5 (data and first factors read), and
/// tables computed with R 4.2.2 survival 3.5-3 survfit.
/// </summary>
public class KaplanMeierTests
{
    [Theory]
    [InlineData("NIST500", 10, 443.0)]
    [InlineData("AML", 15, 27.0)]
    [InlineData("AMLM", 7, 31.0)]
    [InlineData("AMLN", 9, 23.0)]
    [InlineData("OVARIAN", 12, 638.0)]
    [InlineData("KM8215", 6, null)]
    public void Curve_limits_and_median_agree_with_R_survfit(string dataset, int steps, double? median)
    {
        var table = PublishedTable.Read("expected_km_tables", 177);
        foreach (var (name, kind) in new[]
        {
            ("plain", KaplanMeierLimits.Plain), ("log", KaplanMeierLimits.Log), ("log-log", KaplanMeierLimits.LogLog),
        })
        {
            var curve = KaplanMeier.Of(SurvivalData.Sample(dataset), kind);
            var rows = table.Rows.Where(row => table.Text(row, "dataset") == dataset && table.Text(row, "conf_type") == name).ToArray();
            Assert.Equal(steps, rows.Length);
            Assert.Equal(steps, curve.Steps.Count);
            Assert.Equal(median, curve.Median);
            foreach (var (row, step) in rows.Zip(curve.Steps))
            {
                var where = $"{dataset} {name} at {step.At}";
                Assert.Equal(table.Number(row, "time"), step.At);
                Assert.Equal(table.Number(row, "at_risk"), step.AtRisk);
                Assert.Equal(table.Number(row, "events"), step.Failed);
                Near.Relative(table.Number(row, "S"), step.Survival, 1e-12, where + " S");
                Same(table.Number(row, "greenwood_se_S"), step.StandardError, where + " standard error");
                Same(table.Number(row, "lower"), step.Limits.Lower, where + " lower");
                Same(table.Number(row, "upper"), step.Limits.Upper, where + " upper");
            }
        }
    }

    [Fact]
    public void Handbook_example_8_2_1_5_gives_the_exact_fractions()
    {
        var curve = KaplanMeier.Of(SurvivalData.Sample("KM8215"));
        double[] expected = [19 / 20.0, 9 / 10.0, 72 / 85.0, 27 / 34.0, 351 / 476.0, 1755 / 2618.0];
        double[] uses = [10, 32, 56, 98, 122, 181];
        Assert.Equal(uses, curve.Steps.Select(step => step.At));
        foreach (var (value, step) in expected.Zip(curve.Steps))
        {
            Assert.Equal(value, step.Survival, 1e-14);
        }
    }

    // R prints NaN or NA where no unit is left.
    private static void Same(double expected, double? actual, string what)
    {
        if (double.IsNaN(expected))
        {
            Assert.True(actual is null, what);
            return;
        }

        Near.Relative(expected, actual, 1e-12, what);
    }
}
