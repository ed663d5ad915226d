namespace Layshaft.Engineering.Gearing;

/// <summary>A drop pair with a final drive, and the gears of the box where they can be changed.</summary>
/// <param name="DropPair">The drop pair; null for none.</param>
/// <param name="FinalDrive">The final drive.</param>
/// <param name="Gears">The pairs in the box; null for the gears that the car is calculated with.</param>
public sealed record GearSet(ToothPair? DropPair, FinalDrive FinalDrive, GearPairs? Gears = null);
