namespace Layshaft.Engineering.Life;

/// <summary>Least squares for a straight line, in centred and compensated arithmetic.</summary>
public static class LinearRegression
{
    /// <summary>Fits y = a + b·x.</summary>
    /// <param name="xs">Abscissae, finite, at least two different ones.</param>
    /// <param name="ys">Heights, finite, as many as there are abscissae.</param>
    /// <returns>The fitted line.</returns>
    /// <exception cref="ArgumentException">The lists differ in length, hold a value that is not finite, or all abscissae are alike.</exception>
    public static LinearFit Fit(IReadOnlyList<double> xs, IReadOnlyList<double> ys)
    {
        Check(xs, ys);
        var centreX = CompensatedSum.MeanOf(xs);
        var centreY = CompensatedSum.MeanOf(ys);
        return About(xs, ys, centreX, centreY, throughOrigin: false);
    }

    /// <summary>Fits y = b·x: a line held at zero for x = 0.</summary>
    /// <param name="xs">Abscissae, finite, at least one other than zero.</param>
    /// <param name="ys">Heights, finite, as many as there are abscissae.</param>
    /// <returns>The fitted line.</returns>
    /// <exception cref="ArgumentException">The lists differ in length, hold a value that is not finite, or all abscissae are zero.</exception>
    public static LinearFit FitThroughOrigin(IReadOnlyList<double> xs, IReadOnlyList<double> ys)
    {
        Check(xs, ys);
        return About(xs, ys, 0, 0, throughOrigin: true);
    }

    private static LinearFit About(IReadOnlyList<double> xs, IReadOnlyList<double> ys, double centreX, double centreY, bool throughOrigin)
    {
        var sumXX = CompensatedSum.Of(xs.Select(x => (x - centreX) * (x - centreX)));
        if (sumXX == 0)
        {
            throw new ArgumentException("A line needs at least two different abscissae.", nameof(xs));
        }

        var slope = CompensatedSum.Of(xs.Zip(ys, (x, y) => (x - centreX) * (y - centreY))) / sumXX;
        // One round of refinement: what the first slope left in the residuals.
        slope += CompensatedSum.Of(xs.Zip(ys, (x, y) => (x - centreX) * (y - centreY - slope * (x - centreX)))) / sumXX;
        return new LinearFit
        {
            Count = xs.Count,
            ThroughOrigin = throughOrigin,
            Slope = slope,
            Intercept = throughOrigin ? 0 : centreY - slope * centreX,
            CentreX = centreX,
            CentreY = centreY,
            SumOfSquaresX = sumXX,
            RegressionSumOfSquares = slope * slope * sumXX,
            ResidualSumOfSquares = CompensatedSum.Of(xs.Zip(ys, (x, y) => Square(y - centreY - slope * (x - centreX)))),
        };
    }

    private static double Square(double value) => value * value;

    private static void Check(IReadOnlyList<double> xs, IReadOnlyList<double> ys)
    {
        ArgumentNullException.ThrowIfNull(xs);
        ArgumentNullException.ThrowIfNull(ys);
        if (xs.Count != ys.Count)
        {
            throw new ArgumentException("There must be as many heights as abscissae.", nameof(ys));
        }

        if (!xs.Concat(ys).All(double.IsFinite))
        {
            throw new ArgumentException("Every value must be finite.", nameof(xs));
        }

        if (xs.Count == 0)
        {
            throw new ArgumentException("A line needs points.", nameof(xs));
        }
    }
}
