using CsCheck;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Tests.Measurement;

public class GrubbsTestTests
{
    [Fact]
    public void Two_equal_readings_and_one_a_step_away_are_no_outlier()
    {
        Assert.Equal(OutlierStatus.Unremarkable, GrubbsTest.Of([1.00, 1.00, 1.01], resolution: 0.01).Status);
        Assert.True(GrubbsTest.Of([1.00, 1.00, 1.05], resolution: 0.01).IsSuspect);
    }

    [Fact]
    public void Fewer_than_three_readings_or_equal_ones_are_not_tested()
    {
        Assert.Equal(OutlierStatus.NotTested, GrubbsTest.Of([1, 9]).Status);
        Assert.Equal(OutlierStatus.NotTested, GrubbsTest.Of([2, 2, 2, 2]).Status);
    }

    [Fact]
    public void A_flagged_reading_stays_in_the_mean()
    {
        var result = MeasuredValue.From([10, 10.1, 9.9, 10.05, 20], InstrumentFigures.Unknown);

        Assert.Equal(4, result.Outlier.SuspectIndex);
        Assert.True(result.Outlier.IsSuspect);
        Assert.Equal(12.01, result.Value, 1e-12);
        Assert.Equal(5, result.ReadingCount);
    }

    [Fact]
    public void The_statistic_never_passes_its_largest_possible_value() =>
        Gen.Double[-10, 10].Array[3, 20].Sample(readings =>
        {
            var n = readings.Length;
            Assert.InRange(GrubbsTest.Of(readings).Statistic, 0, ((n - 1) / Math.Sqrt(n)) + 1e-9);
        });

    [Fact]
    public void Normal_readings_are_suspected_about_as_often_as_the_significance_says()
    {
        // 5 % of 4000 is 200 with a standard deviation of 14; the generator is fixed, so the count is too.
        var random = new Random(20240517);
        var suspected = Enumerable.Range(0, 4000).Count(_ =>
            GrubbsTest.Of([.. Enumerable.Range(0, 6).Select(_ => MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1))]).IsSuspect);

        Assert.InRange(suspected, 150, 250);
    }
}
