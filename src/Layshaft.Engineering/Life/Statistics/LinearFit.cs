namespace Layshaft.Engineering.Life;

/// <summary>
/// A straight line fitted by least squares, with what its scatter allows to be said. Formulas: NIST/SEMATECH e-Handbook
/// of Statistical Methods, 4.1 and 4.5; the line through the origin uses uncorrected sums of squares as the NIST
/// Statistical Reference Datasets do.
/// </summary>
public sealed record LinearFit
{
    /// <summary>Number of points.</summary>
    public required int Count { get; init; }

    /// <summary>Whether the line was held to pass through the origin.</summary>
    public required bool ThroughOrigin { get; init; }

    /// <summary>Height at abscissa zero; 0 for a line through the origin.</summary>
    public required double Intercept { get; init; }

    /// <summary>Slope, unit of y per unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>Sum of squared residuals.</summary>
    public required double ResidualSumOfSquares { get; init; }

    /// <summary>Sum of squares explained by the line (about the mean, or about zero for a line through the origin).</summary>
    public required double RegressionSumOfSquares { get; init; }

    /// <summary>Abscissa about which the line was worked out: the mean of x, or 0 for a line through the origin.</summary>
    public required double CentreX { get; init; }

    /// <summary>Height of the line at <see cref="CentreX"/>.</summary>
    public required double CentreY { get; init; }

    /// <summary>Sum of squares of x about <see cref="CentreX"/>; greater than 0.</summary>
    public required double SumOfSquaresX { get; init; }

    /// <summary>
    /// Standard uncertainty of a single reading as known beforehand, in the unit of y; 0 if unknown. Intervals never take the scatter
    /// to be less: three readings that happen to lie on a line do not make the instrument perfect.
    /// </summary>
    public double ReadingUncertainty { get; init; }

    /// <summary>
    /// Degrees of freedom that <see cref="ReadingUncertainty"/> counts for: known to one part in two, ν = ½ (Δu/u)⁻² = 2 (JCGM 100:2008,
    /// G.4.2). The residuals are pooled with it, so that with few readings the bounds do not rest on one or two residuals alone.
    /// </summary>
    public const int ReadingFreedom = 2;

    /// <summary>
    /// Degrees of freedom of the intervals when slope and scatter rest on more than these points; <c>null</c> when they do not. The scatter is then
    /// <see cref="ReadingUncertainty"/>.
    /// </summary>
    public int? PooledFreedom { get; init; }

    /// <summary>Residual degrees of freedom; 0 when the line merely joins the points.</summary>
    public int DegreesOfFreedom => Count - (ThroughOrigin ? 1 : 2);

    /// <summary>Residual standard deviation; <c>null</c> without degrees of freedom.</summary>
    public double? ResidualStandardDeviation =>
        DegreesOfFreedom > 0 ? Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom) : null;

    /// <summary>Standard error of the slope; <c>null</c> without degrees of freedom.</summary>
    public double? SlopeStandardError => ResidualStandardDeviation / Math.Sqrt(SumOfSquaresX);

    /// <summary>Standard error of the intercept; <c>null</c> without degrees of freedom or for a line through the origin.</summary>
    public double? InterceptStandardError => ThroughOrigin
        ? null
        : ResidualStandardDeviation * Math.Sqrt(1.0 / Count + CentreX * CentreX / SumOfSquaresX);

    /// <summary>Coefficient of determination, 0 to 1; <c>null</c> when all y are alike.</summary>
    public double? RSquared => RegressionSumOfSquares + ResidualSumOfSquares > 0
        ? RegressionSumOfSquares / (RegressionSumOfSquares + ResidualSumOfSquares)
        : null;

    /// <summary>F statistic of the regression; <c>null</c> without degrees of freedom or without scatter.</summary>
    public double? FStatistic => DegreesOfFreedom > 0 && ResidualSumOfSquares > 0
        ? RegressionSumOfSquares / (ResidualSumOfSquares / DegreesOfFreedom)
        : null;

    /// <summary>Two-sided p-value of the slope against zero; <c>null</c> without degrees of freedom or without scatter.</summary>
    public double? SlopePValue => FStatistic is { } f
        ? Quantiles.StudentTTwoSided(Math.Sqrt(f), DegreesOfFreedom)
        : null;

    /// <summary>Height of the line.</summary>
    /// <param name="x">Abscissa.</param>
    /// <returns>The fitted y.</returns>
    public double At(double x) => CentreY + Slope * (x - CentreX);

    /// <summary>Confidence interval of the slope.</summary>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <returns>The interval; open on both sides without degrees of freedom.</returns>
    public Bounds SlopeBounds(double level) => Freedom == 0
        ? Open(level)
        : Around(Slope, level, Scatter / Math.Sqrt(SumOfSquaresX));

    /// <summary>Interval about the line at one abscissa.</summary>
    /// <param name="x">Abscissa.</param>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <param name="kind">For the line itself, or for one more reading.</param>
    /// <returns>The interval; open on both sides without degrees of freedom.</returns>
    public Bounds IntervalAt(double x, double level, IntervalKind kind)
    {
        if (Freedom == 0)
        {
            return Open(level);
        }

        var offset = x - CentreX;
        return Around(At(x), level, Scatter * Math.Sqrt(Constant(kind) + offset * offset / SumOfSquaresX));
    }

    /// <summary>Where the line reaches a height, with bounds by Fieller's theorem.</summary>
    /// <param name="y">The height.</param>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <param name="kind">For the line itself, or for one more reading.</param>
    /// <returns>The crossing, or <c>null</c> when the slope is zero and there is none.</returns>
    public LineCrossing? CrossingOf(double y, double level, IntervalKind kind)
    {
        Bounds.CheckLevel(level);
        if (Slope == 0)
        {
            return null;
        }

        var rise = y - CentreY;
        var estimate = CentreX + rise / Slope;
        if (Freedom == 0)
        {
            return new LineCrossing(estimate, Open(level));
        }

        var spread = Factor(level) * Scatter;
        var (lower, upper) = Fieller.Solve(Slope, rise, spread * spread, Constant(kind), SumOfSquaresX);
        return new LineCrossing(estimate, new Bounds(level, lower + CentreX, upper + CentreX));
    }

    private int Freedom => PooledFreedom ?? DegreesOfFreedom + (ReadingUncertainty > 0 ? ReadingFreedom : 0);

    private double Scatter => PooledFreedom is not null ? ReadingUncertainty : Math.Max(
        ReadingUncertainty,
        Math.Sqrt((ResidualSumOfSquares + (ReadingUncertainty > 0 ? ReadingFreedom : 0) * ReadingUncertainty * ReadingUncertainty) / Freedom));

    private double Factor(double level) => Quantiles.StudentT(0.5 + level / 2, Freedom);

    private double Constant(IntervalKind kind) =>
        (ThroughOrigin ? 0 : 1.0 / Count) + (kind == IntervalKind.NextReading ? 1 : 0);

    private Bounds Around(double centre, double level, double standardError)
    {
        Bounds.CheckLevel(level);
        var half = Factor(level) * standardError;
        return new Bounds(level, centre - half, centre + half);
    }

    private static Bounds Open(double level)
    {
        Bounds.CheckLevel(level);
        return new Bounds(level, null, null);
    }
}
