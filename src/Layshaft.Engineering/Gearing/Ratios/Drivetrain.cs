namespace Layshaft.Engineering.Gearing;

/// <summary>From the crankshaft to the wheels: the gears, the drop pair and the final drive. Immutable.</summary>
/// <remarks>Gears are numbered from 1. Every ratio is driven over driver.</remarks>
public sealed record Drivetrain
{
    private Drivetrain(IReadOnlyList<Gear> gears, ToothPair? dropPair, FinalDrive finalDrive, DropPairPlace place)
    {
        Gears = gears;
        DropPair = dropPair;
        FinalDrive = finalDrive;
        Place = place;
    }

    /// <summary>The gears from first to top.</summary>
    public IReadOnlyList<Gear> Gears { get; }

    /// <summary>The drop pair; null when the car has none (ratio 1).</summary>
    public ToothPair? DropPair { get; }

    /// <summary>The final drive.</summary>
    public FinalDrive FinalDrive { get; }

    /// <summary>Where the drop pair sits.</summary>
    public DropPairPlace Place { get; }

    /// <summary>The drop pair's ratio; 1 without one.</summary>
    public double DropRatio => DropPair?.Ratio ?? 1;

    /// <summary>The step from each gear to the next: lower gear's ratio over the higher gear's; one fewer than gears.</summary>
    public IReadOnlyList<double> Steps =>
        Enumerable.Range(1, Gears.Count - 1).Select(i => Gears[i - 1].Ratio / Gears[i].Ratio).ToArray();

    /// <summary>First gear's ratio over top gear's.</summary>
    public double Spread => Gears[0].Ratio / Gears[^1].Ratio;

    /// <summary>Checks the parts and joins them.</summary>
    /// <param name="gears">The gears from first to top, ratios falling.</param>
    /// <param name="dropPair">The drop pair; null for none.</param>
    /// <param name="finalDrive">The final drive.</param>
    /// <param name="place">Where the drop pair sits.</param>
    public static Outcome<Drivetrain> Create(
        IReadOnlyList<Gear> gears,
        ToothPair? dropPair,
        FinalDrive finalDrive,
        DropPairPlace place = DropPairPlace.GearboxOutput)
    {
        ArgumentNullException.ThrowIfNull(gears);
        ArgumentNullException.ThrowIfNull(finalDrive);
        var faults = new FaultList();
        if (gears.Count == 0)
        {
            faults.Add(new GearingFault(GearingFaultKind.NoGears, "gears"));
        }

        for (int i = 1; i < gears.Count; i++)
        {
            if (gears[i].Ratio >= gears[i - 1].Ratio)
            {
                faults.Add(new GearingFault(
                    GearingFaultKind.GearsNotFalling, $"gear {gears[i].Name}", gears[i].Ratio, High: gears[i - 1].Ratio));
            }
        }

        return faults.Finish(() => new Drivetrain(gears.ToArray(), dropPair, finalDrive, place));
    }

    /// <summary>The same gears with another drop pair and final drive.</summary>
    /// <param name="dropPair">The drop pair; null for none.</param>
    /// <param name="finalDrive">The final drive.</param>
    public Drivetrain With(ToothPair? dropPair, FinalDrive finalDrive)
    {
        ArgumentNullException.ThrowIfNull(finalDrive);
        return new Drivetrain(Gears, dropPair, finalDrive, Place);
    }

    /// <summary>The same gearbox with a set of gears.</summary>
    /// <param name="set">The set; its pairs, if it has any, replace the gears.</param>
    /// <exception cref="ArgumentException">The set has another number of gears.</exception>
    public Drivetrain With(GearSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (set.Gears is not { } gears)
        {
            return With(set.DropPair, set.FinalDrive);
        }

        return gears.Pairs.Count == Gears.Count
            ? new Drivetrain([.. gears.Pairs.Select((pair, i) => Gear.FromTeeth(Gears[i].Name, pair))], set.DropPair, set.FinalDrive, Place)
            : throw new ArgumentException($"The gearbox has {Gears.Count} gears, the set {gears.Pairs.Count}.", nameof(set));
    }

    /// <summary>The gears, numbered from 1, whose pair differs between two sets.</summary>
    /// <param name="one">The one set.</param>
    /// <param name="other">The other.</param>
    public IReadOnlyList<int> GearsThatDiffer(GearSet one, GearSet other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (Equals(one.Gears, other.Gears))
        {
            return [];
        }

        IReadOnlyList<Gear> first = With(one).Gears, second = With(other).Gears;
        return [.. Enumerable.Range(1, Gears.Count).Where(gear => !first[gear - 1].Pairs.SequenceEqual(second[gear - 1].Pairs))];
    }

    /// <summary>Engine turns for one turn of the wheels: gear × drop pair × final drive.</summary>
    /// <param name="gear">Gear number, 1 to the number of gears.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public double OverallRatio(int gear) => RatioOf(gear) * DropRatio * FinalDrive.Ratio;

    /// <summary>Engine turns for one turn of the mainshaft, on which the dog rings slide.</summary>
    /// <param name="gear">Gear number, 1 to the number of gears.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public double RatioToMainshaft(int gear) =>
        RatioOf(gear) * (Place == DropPairPlace.GearboxInput ? DropRatio : 1);

    /// <summary>Engine turns for one turn of the propeller shaft.</summary>
    /// <param name="gear">Gear number, 1 to the number of gears.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public double RatioToPropshaft(int gear) => RatioOf(gear) * (Place == DropPairPlace.Axle ? 1 : DropRatio);

    private double RatioOf(int gear)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(gear, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(gear, Gears.Count);
        return Gears[gear - 1].Ratio;
    }
}
