namespace Layshaft.Engineering.Settings;

/// <summary>Shims of one thickness as the search sees them.</summary>
/// <param name="ThicknessTenths">Thickness in tenths of a micrometre, above 0.</param>
/// <param name="Count">How many may be used.</param>
/// <param name="Cost">What one costs in the order of preference: 1 from the shelf, far more when it has to be bought.</param>
internal readonly record struct ShimKind(int ThicknessTenths, int Count, long Cost);
