namespace Layshaft.Engineering.Life;

/// <summary>
/// Whether wear falls from the low gears to the high ones. They are changed slowly, at low road speed, where an eased lever
/// has most time to grind the corners of the dogs (common practice, no source).
/// </summary>
public static class LowGears
{
    /// <summary>Forward gears below which nothing is read: with four, one order in twenty-four falls by chance.</summary>
    public const int LeastGears = 4;

    /// <summary>Whether the low gears are worst.</summary>
    /// <param name="gears">Wear by gear, each gear once; reverse is left aside.</param>
    /// <returns>
    /// <c>true</c> when wear falls with the gear beyond chance (Spearman's rank correlation, one-sided, 5 %), first and
    /// second are both worn, and together they are worse than the others by <see cref="DrivingSigns.Alike"/> or more.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="gears"/> is null.</exception>
    public static bool AreWorst(IReadOnlyList<GearWear> gears)
    {
        ArgumentNullException.ThrowIfNull(gears);
        GearWear[] forward = [.. gears.Where(gear => gear.Gear > 0 && gear.Worse is not null)];
        double[] low = [.. forward.Where(gear => gear.Gear <= 2).Select(gear => gear.Worse!.Value)];
        double[] high = [.. forward.Where(gear => gear.Gear > 2).Select(gear => gear.Worse!.Value)];
        if (forward.Length < LeastGears || low.Length < 2 || low.Min() < DrivingSigns.LeastWear)
        {
            return false;
        }

        var falls = RankCorrelation.Of([.. forward.Select(gear => gear.Worse!.Value)], [.. forward.Select(gear => -(double)gear.Gear)]);
        return falls.PValuePositive <= 0.05 && low.Average() >= DrivingSigns.Alike * high.Average();
    }
}
