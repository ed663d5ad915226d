using CsCheck;
using Layshaft.Engineering.Life;

namespace Layshaft.Engineering.Tests.Life.Wear;

public class LinearFitTests
{
    // Steps of a gauge, as readings come: a denormal next to a hundred is no measurement.
    private static readonly Gen<(double[] X, double[] Y)> Points =
        Gen.Select(Gen.Int[0, 10_000].Select(x => x / 100.0), Gen.Int[-10_000, 10_000].Select(y => y / 1000.0)).Array[3, 20]
            .Where(points => points.Max(point => point.Item1) - points.Min(point => point.Item1) > 1)
            .Select(points => (points.Select(point => point.Item1).ToArray(), points.Select(point => point.Item2).ToArray()));

    [Fact]
    public void Residuals_add_to_zero_and_lie_square_to_x()
    {
        Points.Sample(points =>
        {
            var fit = LinearRegression.Fit(points.X, points.Y);
            var residuals = points.X.Zip(points.Y, (x, y) => y - fit.At(x)).ToArray();
            Assert.Equal(0, residuals.Sum(), 1e-9);
            Assert.Equal(0, residuals.Zip(points.X, (residual, x) => residual * x).Sum(), 1e-7);
        });
    }

    [Theory]
    [InlineData(IntervalKind.MeanLine)]
    [InlineData(IntervalKind.NextReading)]
    public void A_height_lies_within_the_interval_exactly_between_the_crossing_bounds(IntervalKind kind)
    {
        Gen.Select(Points, Gen.Double[-30, 30], Gen.Double[-300, 300]).Sample((points, height, x) =>
        {
            var fit = LinearRegression.Fit(points.X, points.Y);
            var crossing = fit.CrossingOf(height, 0.9, kind);
            if (crossing is null)
            {
                Assert.Equal(0, fit.Slope);
                return;
            }

            foreach (var end in new[] { crossing.Bounds.Lower, crossing.Bounds.Upper }.OfType<double>().Where(end => Math.Abs(end) < 1e5))
            {
                var at = fit.IntervalAt(end, 0.9, kind);
                Assert.True(
                    Math.Min(Math.Abs(at.Lower!.Value - height), Math.Abs(at.Upper!.Value - height)) < 1e-5 * (1 + Math.Abs(end)),
                    FormattableString.Invariant($"at {end}"));
            }

            if (IsAtAnEnd(x, crossing.Bounds))
            {
                return;
            }

            var inside = !(x < crossing.Bounds.Lower) && !(x > crossing.Bounds.Upper);
            var interval = fit.IntervalAt(x, 0.9, kind);
            var holds = interval.Lower <= height && height <= interval.Upper;
            // Where both ends are finite the set is one interval; with an open end it may have a second part elsewhere.
            Assert.True(crossing.Bounds is not { IsOpenBelow: false, IsOpenAbove: false } || holds == inside);
            Assert.True(!inside || holds);
        });
    }

    // On the bound itself the last digit decides, and both answers are right.
    private static bool IsAtAnEnd(double x, Bounds bounds) =>
        new[] { bounds.Lower, bounds.Upper }.OfType<double>().Any(end => Math.Abs(x - end) < 1e-6 * (1 + Math.Abs(end)));

    [Fact]
    public void Two_points_give_a_line_and_no_interval()
    {
        var fit = LinearRegression.Fit([1, 2], [3, 5]);
        Assert.Equal((2.0, 1.0), (fit.Slope, fit.Intercept));
        Assert.Null(fit.ResidualStandardDeviation);
        Assert.True(fit.IntervalAt(3, 0.95, IntervalKind.NextReading) is { IsOpenBelow: true, IsOpenAbove: true });
        Assert.Equal(4.5, fit.CrossingOf(10, 0.95, IntervalKind.MeanLine)!.Estimate, 1e-12);
    }

    [Fact]
    public void A_level_line_reaches_no_other_height()
    {
        Assert.Null(LinearRegression.Fit([1, 2, 3], [4, 4, 4]).CrossingOf(5, 0.95, IntervalKind.MeanLine));
        Assert.Null(LinearRegression.Fit([1, 2, 3], [4, 4, 4]).RSquared);
    }

    [Fact]
    public void Points_that_make_no_line_are_refused()
    {
        Assert.Throws<ArgumentException>(() => LinearRegression.Fit([2, 2], [1, 3]));
        Assert.Throws<ArgumentException>(() => LinearRegression.Fit([1], [1]));
        Assert.Throws<ArgumentException>(() => LinearRegression.Fit([], []));
        Assert.Throws<ArgumentException>(() => LinearRegression.Fit([1, 2], [1]));
        Assert.Throws<ArgumentException>(() => LinearRegression.FitThroughOrigin([0, 0], [1, 2]));
        Assert.Throws<ArgumentException>(() => LinearRegression.Fit([1, double.NaN], [1, 2]));
    }
}
