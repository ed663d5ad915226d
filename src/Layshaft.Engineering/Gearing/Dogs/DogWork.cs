namespace Layshaft.Engineering.Gearing;

/// <summary>What the dogs bear over a lap of a venue, engagement by engagement and ring by ring. Immutable.</summary>
/// <remarks>
/// Two free inertias come together without a spring between them: ½ · J₁J₂/(J₁ + J₂) · Δω² is lost (perfectly inelastic
/// engagement; any textbook of mechanics). J₁ is the input side brought to the mainshaft through the engaged gear, J₂ the
/// output side. The rings slide on the mainshaft. Upshifts are those of the run; downshifts are taken one by one under braking,
/// each where the lower gear brings the engine to the speed of <see cref="ShiftStyle.DownshiftAt"/>, the last at the corner's
/// lowest speed.
/// </remarks>
public sealed class DogWork
{
    internal DogWork(bool isAbsolute, IReadOnlyList<DogEngagement> engagements, IReadOnlyList<RingWork> rings)
    {
        IsAbsolute = isAbsolute;
        Engagements = engagements;
        Rings = rings;
    }

    /// <summary>
    /// Whether energies are given: then every one of <see cref="Rings"/> is a <see cref="RingEnergy"/>. Otherwise the inertias are
    /// not known and only shares are.
    /// </summary>
    public bool IsAbsolute { get; }

    /// <summary>Every engagement of one lap, in order.</summary>
    public IReadOnlyList<DogEngagement> Engagements { get; }

    /// <summary>Each ring's part, in the order in which the rings were given.</summary>
    public IReadOnlyList<RingWork> Rings { get; }

    /// <summary>Works it out.</summary>
    /// <param name="car">The car.</param>
    /// <param name="run">Its run over the venue.</param>
    /// <param name="rings">The rings; each gear that is shifted into belongs to exactly one.</param>
    /// <param name="style">How the shifts are made.</param>
    /// <param name="laps">Laps of the event, 1 to 10 000.</param>
    /// <param name="inertias">The inertias; null when they are not known, for shares only.</param>
    public static Outcome<DogWork> For(
        Car car, VenueRun run, IReadOnlyList<DogRing> rings, ShiftStyle style, int laps = 1, DogInertias? inertias = null)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(rings);
        ArgumentNullException.ThrowIfNull(style);
        var faults = new FaultList();
        faults.Range("laps", laps, 1, 10_000);
        faults.Range("residual_mismatch", style.ResidualMismatch.RevolutionsPerMinute, 0, 5000, "rpm");
        if (style.DownshiftAt is { } at)
        {
            faults.Range("downshift_at", at.RevolutionsPerMinute, 500, car.Engine.LimiterRpm, "rpm");
        }

        if (inertias is not null)
        {
            faults.Range("input_side", inertias.InputSide.KilogramSquareMeters, 1e-5, 50, "kg·m²");
            faults.Range("output_side", inertias.OutputSide?.KilogramSquareMeters ?? 1, 1e-5, 1e5, "kg·m²");
        }

        Dictionary<int, string> ringOf = RingOfGear(car.Drivetrain.Gears.Count, rings, faults);
        return faults.Finish(() => new DogWorkReckoning(car, ringOf, style, inertias).Reckon(run, rings, laps));
    }

    private static Dictionary<int, string> RingOfGear(int gears, IReadOnlyList<DogRing> rings, FaultList faults)
    {
        var ringOf = new Dictionary<int, string>();
        foreach (DogRing ring in rings)
        {
            foreach (int gear in ring.Gears)
            {
                if (gear < 1 || gear > gears)
                {
                    Add(ring.Name, FormattableString.Invariant($"gear {gear} is not one of 1 to {gears}."));
                }
                else if (!ringOf.TryAdd(gear, ring.Name))
                {
                    Add(ring.Name, FormattableString.Invariant($"gear {gear} already belongs to ring {ringOf[gear]}."));
                }
            }
        }

        foreach (int gear in Enumerable.Range(1, gears).Where(gear => !ringOf.ContainsKey(gear)))
        {
            Add("rings", FormattableString.Invariant($"gear {gear} has no ring; name the ring that engages it."));
        }

        return ringOf;

        void Add(string subject, string detail) =>
            faults.Add(new GearingFault(GearingFaultKind.RingsDoNotFit, subject, Detail: detail));
    }
}
