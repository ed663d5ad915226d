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
    public void Scatter_far_beyond_the_stated_repeatability_is_pooled_with_it_and_reported()
    {
        var result = MeasuredValue.From([10, 20, 30], new InstrumentFigures { Repeatability = 1 });

        // (2 · 10² + 2 · 1²) / 4 with 2 + 2 degrees of freedom.
        Assert.True(result.ScatterExceedsRepeatability);
        Assert.Equal(Math.Sqrt(50.5 / 3), result.StandardUncertainty, 1e-12);
        Assert.Equal(4, result.Budget.EffectiveDegreesOfFreedom, 1e-9);
    }

    [Fact]
    public void Without_a_stated_repeatability_the_limits_of_the_instrument_explain_the_scatter_of_few_readings()
    {
        var one = MeasuredValue.From([20], Micrometer);
        var two = MeasuredValue.From([20, 22], Micrometer);

        Assert.False(two.ScatterExceedsRepeatability);
        Assert.Equal(one.StandardUncertainty, two.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void Scatter_beyond_the_limits_of_the_instrument_counts()
    {
        var result = MeasuredValue.From([0, 20], Micrometer);

        Assert.True(result.ScatterExceedsRepeatability);
        Assert.True(result.StandardUncertainty > MeasuredValue.From([10], Micrometer).StandardUncertainty);
    }

    [Fact]
    public void Equal_readings_keep_the_uncertainty_of_the_instrument()
    {
        var result = MeasuredValue.From([20, 20], Micrometer);

        Assert.Equal(1.959964 * Math.Sqrt((16 / 3.0) + (1 / 12.0)), result.ExpandedUncertainty, 1e-5);
    }

    [Fact]
    public void A_relative_limit_of_error_grows_with_the_reading()
    {
        var wrench = new InstrumentFigures { RelativeErrorLimit = 0.04 };

        Assert.Equal(4 / Math.Sqrt(3), MeasuredValue.From([100], wrench).StandardUncertainty, 1e-12);
        Assert.Equal(1 / Math.Sqrt(3), MeasuredValue.From([-25], wrench).StandardUncertainty, 1e-12);
    }

    [Theory]
    [InlineData(20.0)]
    [InlineData(20.0, 20.0)]
    [InlineData(20.0, 21.0)]
    [InlineData(20.0, 21.0, 20.5, 20.2, 20.7)]
    public void Without_an_instrument_the_uncertainty_is_not_known(params double[] readings) =>
        Assert.False(MeasuredValue.From(readings, InstrumentFigures.Unknown).UncertaintyIsKnown);

    [Fact]
    public void Two_readings_a_step_apart_are_never_graded_worse_than_the_worse_of_them_alone() =>
        Gen.Select(
            Gen.Double[95, 112], Gen.Double[-1, 1], Gen.Double[0.01, 5], Gen.Double[0, 4], Gen.Double[0, 3], Gen.Double[0, 0.02], Gen.Bool).Sample(
            (first, apart, step, limit, repeatability, share, isRepeatabilityStated) =>
            {
                var gauge = new InstrumentFigures
                {
                    ErrorLimit = limit,
                    RelativeErrorLimit = share,
                    Resolution = step,
                    Repeatability = isRepeatabilityStated ? repeatability : 0,
                };
                Grade Of(params double[] readings)
                {
                    var measured = new MeasuredQuantity(MeasuredValue.From(readings, gauge), UnitsNet.Units.LengthUnit.Micrometer);
                    return new GradePolicy(0.5, null, CloseCall.MeasureAgain).Grade(new PartWear(measured, new WearAllowance(0, 0, 110))).Standing;
                }

                var second = first + (apart * step);
                Assert.True(Of(first, second) <= (Of(first) > Of(second) ? Of(first) : Of(second)));
                Assert.True(Of(first, first) <= Of(first));
            }, iter: 2000);

    [Theory]
    [InlineData(1.0, 0.95, 0.99)]
    [InlineData(2.0, 0.89, 0.95)]
    public void Two_readings_cover_the_true_size_about_as_often_as_they_state(double scatterAgainstStated, double atLeast, double atMost)
    {
        // A dial read to 1 whose error keeps to ±2; the readings scatter as stated, or twice as much.
        var gauge = new InstrumentFigures { ErrorLimit = 2, Resolution = 1, Repeatability = 1 };
        var random = new Random(1);
        var inside = 0;
        const int Trials = 20_000;
        for (var i = 0; i < Trials; i++)
        {
            var (truth, error) = (random.NextDouble(), (random.NextDouble() * 4) - 2);
            double Reading() => Math.Round(truth + error + (scatterAgainstStated * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble())));
            var measured = MeasuredValue.From([Reading(), Reading()], gauge);
            inside += measured.Lower <= truth && truth <= measured.Upper ? 1 : 0;
        }

        Assert.InRange(inside / (double)Trials, atLeast, atMost);
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
