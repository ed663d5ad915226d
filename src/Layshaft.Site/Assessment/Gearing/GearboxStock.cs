using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>The gears of a ratio set with every drop pair and final drive that the shop stocks for the box.</summary>
/// <param name="Gearbox">The type of box.</param>
/// <param name="Set">The gears in it.</param>
/// <param name="Drivetrain">The gears with the first pair and final drive of the stock.</param>
/// <param name="Stock">Every pair, both ways round where it may be swapped, and every final drive; each once.</param>
public sealed record GearboxStock(Gearbox Gearbox, RatioSet Set, Eng.Drivetrain Drivetrain, Eng.GearingStock Stock)
{
    /// <summary>Takes a ratio set over.</summary>
    /// <returns>The stock; null when the gears cannot be used, which the problems then tell.</returns>
    public static GearboxStock? Of(Gearbox gearbox, RatioSet set, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(gearbox);
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(problems);
        Eng.Gear[] gears = [.. set.Gears.Select((g, i) => Eng.Gear.FromTeeth(FormattableString.Invariant($"{i + 1}"), PairOf(g)))];
        var stock = new Eng.GearingStock(PairsOf(gearbox.DropGears), [.. gearbox.FinalDrives.Select(FinalOf).Distinct().OrderBy(f => f.Ratio)]);
        var place = gearbox.DropGears?.Place == DropGearPlace.Input ? Eng.DropPairPlace.GearboxInput : Eng.DropPairPlace.GearboxOutput;
        var train = new FaultPlaces(problems).Take(
            Eng.Drivetrain.Create(gears, stock.DropPairs[0], stock.FinalDrives[0], place), _ => set.Origin.At("gears"));
        return train is null ? null : new GearboxStock(gearbox, set, train, stock);
    }

    /// <summary>A pair as the calculation takes it.</summary>
    public static Eng.ToothPair PairOf(Teeth teeth) => new(teeth.Driver, teeth.Driven);

    /// <summary>A final drive as the calculation takes it: the pinion drives the crown wheel.</summary>
    public static Eng.FinalDrive FinalOf(Teeth teeth) => Eng.FinalDrive.FromTeeth(PairOf(teeth));

    /// <summary>The same stock with an owner's own gears.</summary>
    /// <param name="kit">The owner's kit; null for none.</param>
    public Eng.GearingStock With(Kit? kit) => kit is null ? Stock : new(
        Gearbox.DropGears is { } gears ? PairsOf(gears with { Pairs = [.. gears.Pairs, .. kit.DropPairs] }) : Stock.DropPairs,
        [.. Stock.FinalDrives.Concat(kit.FinalDrives.Select(FinalOf)).Distinct().OrderBy(f => f.Ratio)]);

    // By falling ratio, as a technician lays them out; a box without drop gears has the one choice of none.
    private static IReadOnlyList<Eng.ToothPair?> PairsOf(DropGears? gears)
    {
        if (gears is null)
        {
            return [null];
        }

        var pairs = gears.Pairs.Select(PairOf);
        return [.. (gears.Swappable ? pairs.SelectMany(p => new[] { p, p.Swapped }) : pairs).Distinct().OrderByDescending(p => p.Ratio).ThenBy(p => p.Driver)];
    }
}
