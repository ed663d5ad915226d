using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Working time to change from one set of gears to another.</summary>
/// <param name="DropPair">Working time to change the drop pair, or to fit it the other way round.</param>
/// <param name="FinalDrive">Working time to change the final drive.</param>
/// <param name="GearPair">Working time to change one pair of gears in the box.</param>
/// <param name="FurtherGearPair">Working time for each further pair at the same time.</param>
public sealed record ChangeWork(Duration DropPair, Duration FinalDrive, Duration GearPair, Duration FurtherGearPair)
{
    /// <summary>
    /// Where the working time is not known: drop gears, then the final drive, then pairs in the box, the fewer the better. Common
    /// practice, no source; only the order counts.
    /// </summary>
    public static ChangeWork Usual { get; } = new(Duration.FromHours(1), Duration.FromHours(4), Duration.FromHours(8), Duration.FromHours(1));

    /// <summary>The working time of a change.</summary>
    /// <param name="dropPair">Whether the drop pair changes.</param>
    /// <param name="finalDrive">Whether the final drive changes.</param>
    /// <param name="gearPairs">How many pairs in the box change, 0 or more.</param>
    public Duration Of(bool dropPair, bool finalDrive, int gearPairs) => Duration.FromHours(
        (dropPair ? DropPair.Hours : 0) + (finalDrive ? FinalDrive.Hours : 0) + (gearPairs > 0 ? GearPair.Hours + ((gearPairs - 1) * FurtherGearPair.Hours) : 0));
}
