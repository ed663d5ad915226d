using CsCheck;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Tests.Measurement;

public class MeasuredValueTests
{
    private static readonly InstrumentFigures Micrometer = new() { ErrorLimit = 4, Resolution = 1 };

    private static readonly Gen<double[]> Readings = Gen.Double[-50, 50].Array[1, 12];

    [Fact]
    public void A_single_reading_relies_on_the_instrument_alone()
    {
        var result = MeasuredValue.From([20], Micrometer);

        Assert.Equal(Math.Sqrt((16 / 3.0) + (1 / 12.0)), result.StandardUncertainty, 1e-12);
        Assert.Null(result.StandardDeviation);
        Assert.Equal(1.959964 * result.StandardUncertainty, result.ExpandedUncertainty, 1e-5);
    }

    [Fact]
    public void A_stated_repeatability_counts_for_a_single_reading()
    {
        var result = MeasuredValue.From([20], new InstrumentFigures { Repeatability = 3 });

        Assert.Equal(3, result.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void A_stated_repeatability_shrinks_with_the_root_of_the_number_of_readings()
    {
        var result = MeasuredValue.From([20, 22, 18, 20], new InstrumentFigures { Repeatability = 3 });

        Assert.Equal(1.5, result.StandardUncertainty, 1e-12);
        Assert.False(result.ScatterExceedsRepeatability);
    }

    [Fact]
    public void Scatter_far_beyond_the_stated_repeatability_is_used_and_said()
    {
        var result = MeasuredValue.From([10, 20, 30], new InstrumentFigures { Repeatability = 1 });

        Assert.True(result.ScatterExceedsRepeatability);
        Assert.Equal(10 / Math.Sqrt(3), result.StandardUncertainty, 1e-12);
        Assert.Equal(2, result.Budget.EffectiveDegreesOfFreedom, 1e-9);
    }

    [Fact]
    public void A_relative_limit_of_error_grows_with_the_reading()
    {
        var wrench = new InstrumentFigures { RelativeErrorLimit = 0.04 };

        Assert.Equal(4 / Math.Sqrt(3), MeasuredValue.From([100], wrench).StandardUncertainty, 1e-12);
        Assert.Equal(1 / Math.Sqrt(3), MeasuredValue.From([-25], wrench).StandardUncertainty, 1e-12);
    }

    [Fact]
    public void Nothing_known_of_a_single_reading_is_said()
    {
        Assert.False(MeasuredValue.From([20], InstrumentFigures.Unknown).UncertaintyIsKnown);
        Assert.True(MeasuredValue.From([20, 21], InstrumentFigures.Unknown).UncertaintyIsKnown);
    }

    [Fact]
    public void No_reading_and_readings_that_are_no_number_are_refused()
    {
        Assert.Throws<ArgumentException>(() => MeasuredValue.From([], Micrometer));
        Assert.Throws<ArgumentException>(() => MeasuredValue.From([1, double.NaN], Micrometer));
        Assert.Throws<ArgumentException>(() => MeasuredValue.From([double.PositiveInfinity], Micrometer));
    }

    [Fact]
    public void A_small_scatter_on_a_large_value_keeps_its_digits()
    {
        var sample = SampleStatistics.Of([1e9 + 1, 1e9 + 2, 1e9 + 3]);

        Assert.Equal(1, sample.StandardDeviation!.Value, 1e-6);
    }

    [Fact]
    public void Expanded_uncertainty_scales_with_the_unit() =>
        Gen.Select(Readings, Gen.Double[0.001, 2000], Gen.Double[0.1, 5], Gen.Double[0, 2], Gen.Double[0, 3]).Sample(
            (readings, factor, limit, step, repeatability) =>
            {
                var figures = new InstrumentFigures { ErrorLimit = limit, Resolution = step, Repeatability = repeatability };
                var scaled = new InstrumentFigures
                {
                    ErrorLimit = limit * factor,
                    Resolution = step * factor,
                    Repeatability = repeatability * factor,
                };
                var one = MeasuredValue.From(readings, figures);
                var other = MeasuredValue.From([.. readings.Select(r => r * factor)], scaled);
                var expected = one.ExpandedUncertainty * factor;
                Assert.InRange(other.ExpandedUncertainty, expected * (1 - 1e-6), expected * (1 + 1e-6));
            });

    [Fact]
    public void Shifting_all_readings_leaves_the_uncertainty() =>
        Gen.Select(Readings, Gen.Double[-1000, 1000]).Sample((readings, shift) =>
        {
            var one = MeasuredValue.From(readings, Micrometer);
            var other = MeasuredValue.From([.. readings.Select(r => r + shift)], Micrometer);
            Assert.Equal(one.ExpandedUncertainty, other.ExpandedUncertainty, 1e-6 * one.ExpandedUncertainty);
            Assert.Equal(one.Value + shift, other.Value, 1e-9);
        });

    [Fact]
    public void Effective_degrees_of_freedom_lie_between_the_least_and_the_sum() =>
        Gen.Select(Gen.Double[0.01, 100], Gen.Int[1, 60]).Array[1, 8].Sample(parts =>
        {
            var budget = new UncertaintyBudget([.. parts.Select(p => new UncertaintyComponent("part", p.Item1, p.Item2))]);
            Assert.InRange(
                budget.EffectiveDegreesOfFreedom, parts.Min(p => p.Item2) - 1e-6, parts.Sum(p => p.Item2) + 1e-6);
        });
}
