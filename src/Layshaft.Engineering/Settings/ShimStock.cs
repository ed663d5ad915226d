using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>Shims of one thickness.</summary>
/// <param name="Thickness">Nominal thickness, above 0; taken to the nearest tenth of a micrometre.</param>
/// <param name="Count">How many are on the shelf, 0 or more; 0 for a thickness that is sold but not in stock.</param>
/// <param name="Tolerance">Tolerance ±t of one shim, 0 or more; 0 for shims that are measured one by one.</param>
public sealed record ShimStock(Length Thickness, int Count, Length Tolerance);
