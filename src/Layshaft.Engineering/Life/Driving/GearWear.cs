namespace Layshaft.Engineering.Life;

/// <summary>Wear of the dogs of one gear.</summary>
/// <param name="Gear">The gear: 1, 2, 3 …, or <see cref="Reverse"/>.</param>
/// <param name="DriveSide">Wear of the flanks that carry power, as a share of the allowance (0 new, 1 at the limit); <c>null</c> if not measured.</param>
/// <param name="CoastSide">Wear of the flanks that carry overrun, likewise.</param>
public sealed record GearWear(int Gear, double? DriveSide, double? CoastSide)
{
    /// <summary>The number that stands for reverse.</summary>
    public const int Reverse = -1;

    /// <summary>The worse side's wear, or <c>null</c> when neither was measured.</summary>
    public double? Worse => DriveSide is { } drive && CoastSide is { } coast ? Math.Max(drive, coast) : DriveSide ?? CoastSide;
}
