using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Worked figures of JCGM 100:2008 (GUM) and JCGM 106:2012.</summary>
public class UncertaintyGuideTests
{
    // JCGM 100:2008, 4.4.3, table 1: twenty temperatures in °C. From memory; they reproduce the printed results.
    private static readonly double[] GuideTemperatures =
    [
        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
        100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
    ];

    // NIST Technical Note 1900 (2015), example E2: 22 daily maximum temperatures in °C. From memory.
    private static readonly double[] NistTemperatures =
    [
        18.75, 28.25, 25.75, 28.00, 28.50, 20.75, 21.00, 22.75, 18.50, 27.25, 20.75,
        26.50, 28.00, 23.25, 28.00, 21.75, 26.00, 26.50, 28.00, 33.25, 32.00, 29.50,
    ];

    [Fact]
    public void Type_a_of_the_guide_table_1_is_145_and_1_489_and_0_333()
    {
        // JCGM 100:2008, 4.4.3. From memory.
        var sample = SampleStatistics.Of(GuideTemperatures);

        Assert.Equal(100.145, sample.Mean, 5e-4);
        Assert.Equal(1.489, sample.StandardDeviation!.Value, 5e-4);
        Assert.Equal(0.333, sample.StandardUncertaintyOfMean!.Value, 5e-4);
        Assert.Equal(19, sample.DegreesOfFreedom);
    }

    [Fact]
    public void Nist_example_e2_has_mean_25_59_uncertainty_0_872_and_interval_23_8_to_27_4()
    {
        // NIST Technical Note 1900 (2015), example E2, doi 10.6028/NIST.TN.1900. From memory.
        var sample = SampleStatistics.Of(NistTemperatures);
        var budget = new UncertaintyBudget([new UncertaintyComponent("scatter", sample.StandardUncertaintyOfMean!.Value, sample.DegreesOfFreedom)]);

        Assert.Equal(25.59, sample.Mean, 5e-3);
        Assert.Equal(0.872, budget.StandardUncertainty, 5e-4);
        Assert.Equal(23.8, sample.Mean - budget.ExpandedUncertainty(), 0.05);
        Assert.Equal(27.4, sample.Mean + budget.ExpandedUncertainty(), 0.05);
    }

    [Fact]
    public void End_gauge_comparator_part_is_9_7_nm()
    {
        // JCGM 100:2008, H.1, table H.1: 5.8, 3.9 and 6.7 nm. Read at second hand.
        var budget = Known(5.8, 3.9, 6.7);

        Assert.Equal(9.7, budget.StandardUncertainty, 0.05);
    }

    [Fact]
    public void End_gauge_combined_uncertainty_is_32_nm()
    {
        // JCGM 100:2008, H.1.4: 25, 9.7, 2.9 and 16.6 nm. Read at second hand.
        Assert.Equal(32, Known(25, 9.7, 2.9, 16.6).StandardUncertainty, 0.5);
    }

    [Fact]
    public void End_gauge_effective_degrees_of_freedom_are_16_7_and_the_99_percent_uncertainty_93_nm()
    {
        // JCGM 100:2008, H.1.6: degrees of freedom 18, 25.6, 50 and 2; k = 2.92 for 16.7 truncated to 16. Read at second hand.
        var budget = new UncertaintyBudget(
        [
            new UncertaintyComponent("standard", 25, 18),
            new UncertaintyComponent("comparator", 9.7, 25.6),
            new UncertaintyComponent("expansion difference", 2.9, 50),
            new UncertaintyComponent("temperature difference", 16.6, 2),
        ]);

        Assert.Equal(16.7, budget.EffectiveDegreesOfFreedom, 0.1);
        Assert.Equal(2.92, CoverageFactor.For(Math.Floor(budget.EffectiveDegreesOfFreedom), 0.99), 5e-3);
        Assert.InRange(CoverageFactor.For(budget.EffectiveDegreesOfFreedom, 0.99), 2.898, 2.921);
        Assert.Equal(93, budget.StandardUncertainty * CoverageFactor.For(16, 0.99), 1.0);
    }

    [Theory]
    [InlineData(4, 2.3, 0.05)] // JCGM 100:2008, 4.4.5: limits ±4 °C. From memory.
    [InlineData(0.40e-6, 0.23e-6, 5e-9)] // JCGM 100:2008, 4.3.7: expansion coefficient. From memory.
    public void Rectangular_limits_divide_by_root_three(double halfWidth, double expected, double tolerance) =>
        Assert.Equal(expected, UncertaintyComponent.Rectangular("limits", halfWidth).StandardUncertainty, tolerance);

    [Fact]
    public void Triangular_limits_divide_by_root_six() =>
        Assert.Equal(1.6, UncertaintyComponent.Triangular("limits", 4).StandardUncertainty, 0.05); // JCGM 100:2008, 4.4.6. From memory.

    [Fact]
    public void Resolution_is_0_29_of_a_step() =>
        Assert.Equal(0.29, UncertaintyComponent.Resolution("display", 1).StandardUncertainty, 0.002); // JCGM 100:2008, F.2.2.1. From memory.

    [Theory]
    [InlineData(1, 12.71)]
    [InlineData(2, 4.30)]
    [InlineData(3, 3.18)]
    [InlineData(4, 2.78)]
    [InlineData(5, 2.57)]
    [InlineData(6, 2.45)]
    [InlineData(7, 2.36)]
    [InlineData(8, 2.31)]
    [InlineData(10, 2.23)]
    [InlineData(20, 2.09)]
    [InlineData(50, 2.01)]
    [InlineData(double.PositiveInfinity, 1.960)]
    public void Coverage_factors_at_95_percent_are_those_of_table_g_2(double degreesOfFreedom, double expected) =>
        Assert.Equal(expected, CoverageFactor.For(degreesOfFreedom), 6e-3); // JCGM 100:2008, table G.2. From memory.

    // JCGM 100:2008, G.4.1 allows interpolation in table G.2. Here t is that of the real number of degrees of freedom, checked
    // by integrating the density of Student's t (JCGM 100, G.3.2).
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    [InlineData(1.9)]
    [InlineData(2.5)]
    [InlineData(7.25)]
    [InlineData(16.7)]
    public void Between_whole_degrees_of_freedom_the_factor_bounds_95_percent_of_the_density(double degreesOfFreedom)
    {
        var factor = CoverageFactor.For(degreesOfFreedom);

        Assert.InRange(factor, CoverageFactor.For(Math.Ceiling(degreesOfFreedom)), CoverageFactor.For(Math.Floor(degreesOfFreedom)));
        Assert.Equal(0.95, 2 * DensityUpTo(factor, degreesOfFreedom) / (2 * DensityUpTo(double.PositiveInfinity, degreesOfFreedom)), 1e-5);
    }

    [Theory]
    [InlineData(1, 0.90, 6.314)]
    [InlineData(1, 0.95, 12.706)]
    [InlineData(1, 0.98, 31.821)]
    public void Coverage_factors_are_those_of_the_nist_table(int degreesOfFreedom, double confidence, double expected) =>
        Assert.Equal(expected, CoverageFactor.For(degreesOfFreedom, confidence), 6e-4); // NIST e-Handbook 1.3.6.7.2, read from a third-party copy.

    [Fact]
    public void Conformance_probability_of_the_breakdown_voltage_is_0_92()
    {
        // JCGM 106:2012: limit -5.40 V, result -5.47 V, standard uncertainty 0.05 V. From memory.
        var p = LimitDecision.ConformanceProbability(-5.47, 0.05, -5.40, LimitSense.Upper);

        Assert.Equal(0.92, p, 0.005);
    }

    // ∫ (1 + t²/ν)^(−(ν+1)/2) dt from 0, with t = √ν·tan θ: √ν ∫ cos^(ν−1) θ dθ, by Simpson's rule.
    private static double DensityUpTo(double t, double degreesOfFreedom)
    {
        var end = double.IsPositiveInfinity(t) ? Math.PI / 2 : Math.Atan(t / Math.Sqrt(degreesOfFreedom));
        const int Steps = 200_000;
        double At(int i) => Math.Pow(Math.Max(0, Math.Cos(end * i / Steps)), degreesOfFreedom - 1);
        var sum = At(0) + At(Steps);
        for (var i = 1; i < Steps; i++)
        {
            sum += (i % 2 == 0 ? 2 : 4) * At(i);
        }

        return Math.Sqrt(degreesOfFreedom) * sum * end / (3 * Steps);
    }

    private static UncertaintyBudget Known(params double[] uncertainties) =>
        new([.. uncertainties.Select(u => UncertaintyComponent.Known("part", u))]);
}
