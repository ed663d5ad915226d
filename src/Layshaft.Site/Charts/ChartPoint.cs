namespace Layshaft.Site.Charts;

/// <summary>A point of a chart, in the units of its axes. Both numbers must be finite.</summary>
/// <param name="X">Along the horizontal axis.</param>
/// <param name="Y">Along the vertical axis.</param>
public readonly record struct ChartPoint(double X, double Y);
