namespace Layshaft.Engineering.Gearing;

/// <summary>A drop pair with a final drive.</summary>
/// <param name="DropPair">The drop pair; null for none.</param>
/// <param name="FinalDrive">The final drive.</param>
public sealed record GearSet(ToothPair? DropPair, FinalDrive FinalDrive);
