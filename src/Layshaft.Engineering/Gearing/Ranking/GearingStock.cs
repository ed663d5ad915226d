namespace Layshaft.Engineering.Gearing;

/// <summary>What a shop has on the shelf for one gearbox and axle.</summary>
/// <param name="DropPairs">
/// The drop pairs in stock, each way round that they can be fitted; a null stands for a car without a drop pair. A pair that is
/// listed twice counts once.
/// </param>
/// <param name="FinalDrives">The final drives in stock.</param>
public sealed record GearingStock(IReadOnlyList<ToothPair?> DropPairs, IReadOnlyList<FinalDrive> FinalDrives);
