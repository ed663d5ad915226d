namespace Layshaft.Engineering.Life;

/// <summary>
/// What the wear of the dogs says about how they engage. Only wear that has reached the watch level beyond its uncertainty
/// counts. The rules are common practice of the trade, no source: reverse and first are engaged at rest, the other gears on the move.
/// </summary>
/// <param name="AtRest">Worn gears that are engaged at rest, worst first.</param>
/// <param name="Moving">Worn gears that are engaged on the move, lowest first.</param>
/// <param name="OneStandsOut">Whether one gear engaged on the move is far more worn than the others, which are sound.</param>
/// <param name="Side">Which flanks of the gears in <paramref name="Moving"/> are worn.</param>
/// <param name="Better">Higher gears that are sound and whose steps are smaller than those of every gear in <paramref name="Moving"/>, lowest first.</param>
/// <param name="IsNothingWorn">Whether every gear that was measured is sound.</param>
public sealed record DrivingSigns(
    IReadOnlyList<int> AtRest, IReadOnlyList<int> Moving, bool OneStandsOut, WornSide Side, IReadOnlyList<int> Better, bool IsNothingWorn)
{
    /// <summary>Gears engaged on the move below which none can stand out: with two, one is always the worse.</summary>
    public const int LeastGears = 3;

    /// <summary>How many times worse a gear must be to stand out.</summary>
    public const double StandsOut = 2.0;

    /// <summary>Share of both sides' wear from which one side counts as the worse.</summary>
    public const double SideShare = 0.6;

    /// <summary>Reads the signs.</summary>
    /// <param name="gears">Wear by gear, each gear once, each with a side measured.</param>
    /// <param name="ratios">Ratios of the forward gears, first gear first; empty if they are not known.</param>
    /// <returns>What they say.</returns>
    /// <exception cref="ArgumentException">A gear is named twice or has no wear, or a number is not finite.</exception>
    public static DrivingSigns Of(IReadOnlyList<GearWear> gears, IReadOnlyList<double> ratios)
    {
        ArgumentNullException.ThrowIfNull(gears);
        ArgumentNullException.ThrowIfNull(ratios);
        if (gears.Select(gear => gear.Gear).Distinct().Count() != gears.Count)
        {
            throw new ArgumentException("Each gear is named once.", nameof(gears));
        }

        if (gears.Any(gear => gear is { Drive: null, Coast: null, Either: null } || !double.IsFinite(gear.Worst.Share) || !(gear.Worst.Uncertainty >= 0)))
        {
            throw new ArgumentException("Wear is a finite share with an uncertainty of 0 or more.", nameof(gears));
        }

        GearWear[] moving = [.. gears.Where(gear => gear.Gear > 1).OrderBy(gear => gear.Gear)];
        GearWear[] worn = [.. moving.Where(gear => gear.IsWorn)];
        var alone = worn.Length == 1 && moving.Length >= LeastGears
            && moving.Where(gear => gear != worn[0]).All(gear => gear.IsSound && worn[0].Worst.Share - worn[0].Worst.Uncertainty >= StandsOut * gear.Worst.Share);
        return new DrivingSigns(
            [.. gears.Where(gear => gear.Gear <= 1 && gear.IsWorn).OrderByDescending(gear => gear.Worst.Share).Select(gear => gear.Gear)],
            [.. worn.Select(gear => gear.Gear)],
            alone,
            SideOf(worn),
            alone || worn.Length == 0 ? [] : [.. BetterThan(worn, moving, ratios)],
            gears.Count > 0 && gears.All(gear => gear.IsSound));
    }

    // The smaller the step, the smaller the speed difference at the dogs.
    private static IEnumerable<int> BetterThan(GearWear[] worn, GearWear[] moving, IReadOnlyList<double> ratios)
    {
        var highest = worn[^1].Gear;
        if (moving[^1].Gear > ratios.Count)
        {
            return [];
        }

        double Step(int gear) => ratios[gear - 2] / ratios[gear - 1];
        var least = worn.Min(gear => Step(gear.Gear));
        GearWear[] above = [.. moving.Where(gear => gear.Gear > highest)];
        return above.All(gear => gear.IsSound && Step(gear.Gear) < least) ? above.Select(gear => gear.Gear) : [];
    }

    private static WornSide SideOf(GearWear[] worn)
    {
        if (worn.Length == 0 || worn.Any(gear => gear.Either is { IsWorn: true }))
        {
            return WornSide.NotKnown;
        }

        // The technician records the side that is worn: where only one was, that is the side.
        if (worn.All(gear => gear is { Drive: not null, Coast: null }))
        {
            return WornSide.Drive;
        }

        if (worn.All(gear => gear is { Drive: null, Coast: not null }))
        {
            return WornSide.Coast;
        }

        if (worn.Any(gear => gear.Drive is null || gear.Coast is null))
        {
            return WornSide.NotKnown;
        }

        // The sum may be one bad gear: most gears must lean the same way as well, beyond their uncertainty.
        var share = worn.Sum(gear => Positive(gear.Drive!)) / worn.Sum(gear => Positive(gear.Drive!) + Positive(gear.Coast!));
        return share >= SideShare && 3 * worn.Count(gear => Exceeds(gear.Drive!, gear.Coast!)) >= 2 * worn.Length ? WornSide.Drive
            : share <= 1 - SideShare && 3 * worn.Count(gear => Exceeds(gear.Coast!, gear.Drive!)) >= 2 * worn.Length ? WornSide.Coast
            : WornSide.BothAlike;
    }

    private static double Positive(DogWear wear) => Math.Max(0, wear.Share);

    private static bool Exceeds(DogWear one, DogWear other) =>
        one.Share - other.Share > Math.Sqrt((one.Uncertainty * one.Uncertainty) + (other.Uncertainty * other.Uncertainty));
}
