using UnitsNet;

namespace Layshaft.Engineering.Settings.Bearings;

/// <summary>
/// Radial internal clearances of new bearings with a cylindrical bore of 10 to 80 mm, from makers' published tables that follow
/// ISO 5753-1 (the standard itself was not at hand). A general value to judge a reading by; the bearing maker's own figure rules.
/// </summary>
public static class RadialClearance
{
    // Over, up to and including (mm), then low and high of C2, normal, C3, C4, C5 in micrometres.
    private static readonly int[][] DeepGrooveRows =
    [
        [10, 18, 0, 9, 3, 18, 11, 25, 18, 33, 25, 45],
        [18, 24, 0, 10, 5, 20, 13, 28, 20, 36, 28, 48],
        [24, 30, 1, 11, 5, 20, 13, 28, 23, 41, 30, 53],
        [30, 40, 1, 11, 6, 20, 15, 33, 28, 46, 40, 64],
        [40, 50, 1, 11, 6, 23, 18, 36, 30, 51, 45, 73],
        [50, 65, 1, 15, 8, 28, 23, 43, 38, 61, 55, 90],
        [65, 80, 1, 15, 10, 30, 25, 51, 46, 71, 65, 105],
    ];

    private static readonly int[][] CylindricalRollerRows =
    [
        [10, 24, 0, 25, 20, 45, 35, 60, 50, 75, 65, 90],
        [24, 30, 0, 25, 20, 45, 35, 60, 50, 75, 70, 95],
        [30, 40, 5, 30, 25, 50, 45, 70, 60, 85, 80, 105],
        [40, 50, 5, 35, 30, 60, 50, 80, 70, 100, 95, 125],
        [50, 65, 10, 40, 40, 70, 60, 90, 80, 110, 110, 140],
        [65, 80, 10, 45, 40, 75, 65, 100, 90, 125, 130, 165],
    ];

    /// <summary>Clearance of a deep groove ball bearing.</summary>
    /// <param name="bore">Bore diameter, above 10 mm and up to 80 mm.</param>
    /// <param name="group">Clearance group.</param>
    /// <returns>The range, or <see langword="null"/> for a bore outside the table.</returns>
    public static ClearanceRange? OfDeepGrooveBall(Length bore, ClearanceGroup group) => Find(DeepGrooveRows, bore, group);

    /// <summary>Clearance of a cylindrical roller bearing whose parts are not matched.</summary>
    /// <param name="bore">Bore diameter, above 10 mm and up to 80 mm.</param>
    /// <param name="group">Clearance group.</param>
    /// <returns>The range, or <see langword="null"/> for a bore outside the table.</returns>
    public static ClearanceRange? OfCylindricalRoller(Length bore, ClearanceGroup group) => Find(CylindricalRollerRows, bore, group);

    private static ClearanceRange? Find(int[][] rows, Length bore, ClearanceGroup group)
    {
        if (!Enum.IsDefined(group))
        {
            throw new ArgumentOutOfRangeException(nameof(group), group, "this is no clearance group");
        }

        var boreMm = bore.Millimeters;
        var row = Array.Find(rows, line => boreMm > line[0] && boreMm <= line[1]);
        var at = 2 + (2 * (int)group);
        return row is null ? null : new ClearanceRange(Length.FromMicrometers(row[at]), Length.FromMicrometers(row[at + 1]));
    }
}
