using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>
/// Made up: six units with one to four readings, and a part with two. Expected values by R 4.2.2. Lines: <c>m &lt;- lm(y ~ x:factor(unit))</c>. The part's slope:
/// least squares with one more row √k·(0, 1) for √k times the mean rate, <c>lm(c(y, sqrt(k)*mean) ~ 0 + c(1,1,0) + c(x - mean(x), sqrt(k)))</c>,
/// k = scatter² / spread², with the prediction interval from <c>solve(t(X) %*% X)</c> and <c>qt(0.975, 5)</c>, and <c>uniroot</c> for where it reaches 1.
/// </summary>
public class PooledWearTests
{
    private static readonly WearReading[][] Units =
    [
        [new(10, 0.14), new(25, 0.31), new(40, 0.46)],
        [new(18, 0.17), new(37, 0.36)],
        [new(30, 0.22)],
        [new(8, 0.12), new(16, 0.20), new(30, 0.41), new(45, 0.60)],
        [new(22, 0.20), new(41, 0.33)],
        [new(12, 0.16), new(20, 0.24), new(33, 0.41)],
    ];

    [Fact]
    public void Units_of_a_type_have_the_lines_of_R_lm()
    {
        var type = TypeWear.Of(Units, 0.02)!;
        Assert.Equal((6, 1.0), (type.Units, type.Rates[0].Power));
        Near.Relative(0.0150773544051, type.Height, 1e-9, "height");
        Near.Relative(-4.63159836739, type.Rates[0].LogMean, 1e-10, "mean of log rates");
        Near.Relative(0.251880052164, type.Rates[0].LogDeviation, 1e-9, "deviation of log rates");
        Near.Relative(-4.58376658067, type.LogMedian, 1e-10, "median of log rates");
        Near.Relative(0.0131147684221, type.Scatter, 1e-8, "scatter");
    }

    [Fact]
    public void A_part_with_two_readings_has_the_line_of_R_lm_with_one_more_row()
    {
        var trend = PooledTrend.Of([new(14, 0.18), new(29, 0.30)], WearLimit.Share, TypeWear.Of(Units, 0.02)!, new() { ReadingUncertainty = 0.02 })!;
        Near.Relative(0.00833847012173, trend.Curve.Fit.Slope, 1e-10, "slope");
        Near.Relative(0.561031099686, trend.Curve.At(60), 1e-10, "wear at 60 h");
        Near.Relative(0.382111235074, trend.Curve.PredictionAt(60, 0.95).Lower, 1e-9, "lower");
        Near.Relative(0.739950964299, trend.Curve.PredictionAt(60, 0.95).Upper, 1e-9, "upper");
        Near.Relative(80.8001017373, trend.Curve.CrossingOf(1, 0.95)!.Bounds.Lower, 1e-9, "limit first possible");
    }
}
