using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>Some shims of one thickness in a pack.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Count">How many, 1 or more.</param>
/// <param name="ToBuy">How many of them are not in stock.</param>
/// <param name="GroundTo">Thickness to which one of them is ground; <see langword="null"/> where none is.</param>
public sealed record ShimUse(Length Thickness, int Count, int ToBuy = 0, Length? GroundTo = null);
