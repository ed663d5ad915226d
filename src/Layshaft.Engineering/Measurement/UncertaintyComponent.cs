namespace Layshaft.Engineering.Measurement;

/// <summary>One contribution to the uncertainty of a result, as a standard uncertainty (JCGM 100:2008, 3.3.5).</summary>
/// <param name="Source">What it comes from, in a few words.</param>
/// <param name="StandardUncertainty">Standard uncertainty in the unit of the result, 0 or more.</param>
/// <param name="DegreesOfFreedom">
/// Degrees of freedom, 1 or more; <see cref="double.PositiveInfinity"/> where the figure is taken as known (JCGM 100, G.4.3).
/// </param>
public sealed record UncertaintyComponent(string Source, double StandardUncertainty, double DegreesOfFreedom)
{
    /// <summary>Standard uncertainty in the unit of the result, 0 or more.</summary>
    public double StandardUncertainty { get; } = double.IsFinite(StandardUncertainty) && StandardUncertainty >= 0
        ? StandardUncertainty
        : throw new ArgumentOutOfRangeException(nameof(StandardUncertainty), StandardUncertainty, "a standard uncertainty is 0 or more");

    /// <summary>Degrees of freedom, 1 or more, or infinite.</summary>
    public double DegreesOfFreedom { get; } = DegreesOfFreedom >= 1
        ? DegreesOfFreedom
        : throw new ArgumentOutOfRangeException(nameof(DegreesOfFreedom), DegreesOfFreedom, "degrees of freedom are 1 or more");

    /// <summary>A figure taken as known: infinite degrees of freedom.</summary>
    /// <param name="source">What it comes from.</param>
    /// <param name="standardUncertainty">Standard uncertainty, 0 or more.</param>
    /// <returns>The component.</returns>
    public static UncertaintyComponent Known(string source, double standardUncertainty) =>
        new(source, standardUncertainty, double.PositiveInfinity);

    /// <summary>Limits ±a with every value between them equally likely: a/√3 (JCGM 100, 4.3.7 and 4.4.5).</summary>
    /// <param name="source">What it comes from.</param>
    /// <param name="halfWidth">a, half the distance between the limits, 0 or more.</param>
    /// <returns>The component.</returns>
    public static UncertaintyComponent Rectangular(string source, double halfWidth) => Known(source, halfWidth / Math.Sqrt(3));

    /// <summary>Limits ±a with values near the middle likelier: a/√6 (JCGM 100, 4.3.9 and 4.4.6).</summary>
    /// <param name="source">What it comes from.</param>
    /// <param name="halfWidth">a, half the distance between the limits, 0 or more.</param>
    /// <returns>The component.</returns>
    public static UncertaintyComponent Triangular(string source, double halfWidth) => Known(source, halfWidth / Math.Sqrt(6));

    /// <summary>A display or scale that reads in steps: δ/√12 (JCGM 100, F.2.2.1).</summary>
    /// <param name="source">What it comes from.</param>
    /// <param name="step">δ, the smallest step that can be read, 0 or more.</param>
    /// <returns>The component.</returns>
    public static UncertaintyComponent Resolution(string source, double step) => Known(source, step / Math.Sqrt(12));

    /// <summary>An expanded uncertainty from a certificate, divided by its coverage factor (JCGM 100, 4.3.3).</summary>
    /// <param name="source">What it comes from.</param>
    /// <param name="expanded">Expanded uncertainty, 0 or more.</param>
    /// <param name="coverageFactor">The factor that the certificate states, above 0; 2 is usual.</param>
    /// <returns>The component.</returns>
    public static UncertaintyComponent FromExpanded(string source, double expanded, double coverageFactor) =>
        Known(source, expanded / coverageFactor);
}
