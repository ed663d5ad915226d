using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Lives that are seen at inspections only. Cracks: Nelson, Applied Life Data Analysis, 1982, p. 415, 167 parts, as R's package survival has
/// it (<c>cracks</c>); expected values by R 4.2.2 <c>survreg(Surv(lo, hi, type = "interval2") ~ 1, weights)</c> and scipy 1.10.1, which agree to
/// seven digits. Truncated: 40 made-up parts, some fitted used; expected values by two optimisers of scipy 1.10.1.
/// </summary>
public class InspectionTests
{
    private static LifeSample Cracks
    {
        get
        {
            (double Days, int Cracked)[] inspections = [(186, 5), (606, 16), (902, 12), (1077, 18), (1209, 18), (1377, 2), (1592, 6), (1932, 17)];
            double[] before = [0, .. inspections.Select(i => i.Days)];
            return LifeSample.Of(
                UseMeasure.Events,
                [
                    .. inspections.SelectMany((i, k) => Enumerable.Repeat(ObservedLife.FailedBetween(before[k], i.Days), i.Cracked)),
                    .. Enumerable.Repeat(ObservedLife.GoodAt(1932), 73),
                ]);
        }
    }

    private static LifeSample Truncated
    {
        get
        {
            var table = PublishedTable.Read("truncated_interval", 40);
            return LifeSample.Of(UseMeasure.Hours, table.Rows
                .Select(row => new ObservedLife(
                    table.Number(row, "last_good_h"),
                    table.Text(row, "first_worn_h") is { Length: > 0 } worn ? PublishedTable.ToNumber(worn) : null,
                    table.Number(row, "entry_h"))));
        }
    }

    [Fact]
    public void Cracks_found_at_inspections_give_the_fit_of_R_survreg()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Cracks));
        Assert.Equal((167, 94), (fit.Units, fit.Failures));
        Near.Relative(1.4847675, fit.Shape, 1e-6, "shape");
        Near.Relative(2182.0041, fit.Scale, 1e-6, "scale");
        Near.Relative(-309.6311809, fit.LogLikelihood, 1e-8, "log-likelihood");
        Near.Relative(0.005539336, fit.Covariance.LogScaleVariance, 1e-5, "variance of log scale");
        Near.Relative(0.002624128, fit.Covariance.LogScaleLogSigma, 1e-5, "covariance");
        Near.Relative(0.009733616, fit.Covariance.LogShapeVariance, 1e-5, "variance of log sigma");
        Near.Relative(479.31737, fit.LifeAt(0.1), 1e-6, "B10");
        Near.Relative(363.42287, fit.LifeDeltaBounds(0.1).Lower, 1e-5, "B10 lower, delta");
        Near.Relative(632.17028, fit.LifeDeltaBounds(0.1).Upper, 1e-5, "B10 upper, delta");
        Near.Relative(350.471, fit.LifeBounds(0.1, forFewFailures: false).Lower, 1e-5, "B10 lower, profile");
        Near.Relative(614.090, fit.LifeBounds(0.1, forFewFailures: false).Upper, 1e-5, "B10 upper, profile");
        Near.Relative(1.215209, fit.ShapeBounds().Lower, 1e-5, "shape lower, profile");
        Near.Relative(1.789999, fit.ShapeBounds().Upper, 1e-5, "shape upper, profile");
    }

    [Fact]
    public void The_SAS_QC_guide_prints_the_scale_of_the_cracks_in_months() =>
        Assert.Equal(71.69, Assert.IsType<WeibullFit>(Weibull.Fit(Cracks)).Scale * 12 / 365.25, 5e-3);

    [Fact]
    public void Parts_fitted_used_give_the_fit_of_two_optimisers()
    {
        var fit = Assert.IsType<WeibullFit>(Weibull.Fit(Truncated));
        Assert.Equal((40, 18), (fit.Units, fit.Failures));
        Near.Relative(2.0334246, fit.Shape, 1e-6, "shape");
        Near.Relative(63.7441843, fit.Scale, 1e-6, "scale");
        Near.Relative(-46.14977659, fit.LogLikelihood, 1e-8, "log-likelihood");
        Near.Relative(21.077151, fit.LifeAt(0.1), 1e-6, "B10");
        Near.Relative(10.93692, fit.LifeBounds(0.1, forFewFailures: false).Lower, 1e-5, "B10 lower, profile");
        Near.Relative(30.66517, fit.LifeBounds(0.1, forFewFailures: false).Upper, 1e-5, "B10 upper, profile");
        Near.Relative(1.268640, fit.ShapeBounds().Lower, 1e-5, "shape lower, profile");
        Near.Relative(2.959694, fit.ShapeBounds().Upper, 1e-5, "shape upper, profile");
    }

    // All parts were inspected on the same days, so the estimate is the plain share: by hand.
    [Fact]
    public void Common_inspections_give_the_plain_share_still_good()
    {
        var curve = TurnbullCurve.Of(Cracks);
        int[] cracked = [5, 21, 33, 51, 69, 71, 77, 94];
        Assert.Equal([186, 606, 902, 1077, 1209, 1377, 1592, 1932], curve.Steps.Select(step => step.To));
        Assert.All(cracked.Zip(curve.Steps), pair => Assert.Equal(1 - pair.First / 167.0, pair.Second.Survival, 1e-6));
    }

    // Made up; R 4.2.2 survival 3.5-3: survfit(Surv(lo, hi, type = "interval2") ~ 1), whose own search stops some 3e-4 from the maximum.
    [Fact]
    public void Staggered_inspections_give_the_curve_of_R_survfit()
    {
        double[] expected = [0.864120336584, 0.640740766823, 0.599505795958, 0.573046043706, 0.518648160828, 0.281378406806, 0];
        var steps = TurnbullCurve.Of(LifeSample.Of(UseMeasure.Hours, Staggered)).Steps;
        Assert.All(expected, value => Assert.Contains(steps, step => Math.Abs(step.Survival - value) < 5e-4));
    }

    // Made up, in two groups of ten; R 4.2.2 survival 3.5-3: survreg with and without the group.
    [Fact]
    public void Two_groups_seen_at_inspections_differ_as_R_survreg_says() =>
        Compared(0.21196622603, 0.64523064198, LifeSample.Of(UseMeasure.Hours, Staggered[..10]), LifeSample.Of(UseMeasure.Hours, Staggered[10..]));

    // R. G. Miller, Survival Analysis, 1997 (R's aml); R 4.2.2 survival 3.5-3: survreg with and without the group.
    [Fact]
    public void The_leukaemia_groups_differ_as_R_survreg_says() =>
        Compared(5.31404805881, 0.0211541483394, SurvivalData.Sample("AMLM"), SurvivalData.Sample("AMLN"));

    private static ObservedLife[] Staggered
    {
        get
        {
            double[] good = [0, 12, 24, 10, 30, 45, 20, 15, 40, 28, 0, 9, 18, 22, 35, 14, 27, 33, 41, 50];
            double?[] worn = [12, 24, 36, 26, null, 60, 38, 29, null, 44, 11, 21, 30, 40, null, 28, 39, null, 55, null];
            return [.. good.Zip(worn, (g, w) => new ObservedLife(g, w))];
        }
    }

    private static void Compared(double statistic, double chance, params LifeSample[] groups)
    {
        var difference = Assert.IsType<LifeDifference>(LifeComparison.Of(groups));
        Assert.Equal(1, difference.DegreesOfFreedom);
        Near.Relative(statistic, difference.Statistic, 1e-7, "likelihood ratio");
        Near.Relative(chance, difference.PValue, 1e-7, "p");
    }

    /// <summary>Where every failure is at a known moment: tables of R 4.2.2 survival 3.5-3 survfit, and NIST e-Handbook 8.2.1.5 (KM8215).</summary>
    [Theory]
    [InlineData("NIST500")]
    [InlineData("AML")]
    [InlineData("AMLM")]
    [InlineData("AMLN")]
    [InlineData("OVARIAN")]
    [InlineData("KM8215")]
    public void Known_moments_give_the_product_limit_estimate_of_R_survfit(string dataset)
    {
        var table = PublishedTable.Read("expected_km_tables", 177);
        var rows = table.Rows.Where(row => table.Text(row, "dataset") == dataset && table.Text(row, "conf_type") == "plain").ToArray();
        var steps = TurnbullCurve.Of(SurvivalData.Sample(dataset)).Steps;
        Assert.Equal(rows.Select(row => table.Number(row, "time")), steps.Select(step => step.To));
        Assert.All(rows.Zip(steps), pair => Assert.Equal(table.Number(pair.First, "S"), pair.Second.Survival, 1e-12));
    }
}
