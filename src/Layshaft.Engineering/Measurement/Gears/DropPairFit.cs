namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>A drop pair on a fixed centre distance: how its profile shift is shared, and what stands against it.</summary>
/// <param name="Sum">What its tooth sum needs.</param>
/// <param name="Pair">The two gears with their shifts, tips shortened for full clearance; <see langword="null"/> where no such gears can be made.</param>
/// <param name="Troubles">Why the pair is unreasonable; empty where it is not.</param>
public sealed record DropPairFit(ToothSumFit Sum, GearPair? Pair, IReadOnlyList<FitTrouble> Troubles)
{
    /// <summary>Whether nothing stands against the pair.</summary>
    public bool IsReasonable => Troubles.Count == 0;
}
