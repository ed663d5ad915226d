namespace Layshaft.Engineering.Settings;

/// <summary>Shims of one thickness as the search sees them.</summary>
/// <param name="ThicknessUm">Thickness in micrometres, above 0.</param>
/// <param name="Count">How many may be used.</param>
/// <param name="Cost">What one costs in the order of preference: 1 from the shelf, far more when it has to be bought.</param>
internal readonly record struct ShimKind(int ThicknessUm, int Count, long Cost);
