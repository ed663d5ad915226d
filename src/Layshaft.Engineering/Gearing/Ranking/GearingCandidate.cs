using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One drop pair with one final drive over a whole venue.</summary>
public sealed record GearingCandidate
{
    /// <summary>The drop pair and the final drive.</summary>
    public required GearSet Set { get; init; }

    /// <summary>The drop pair; null for none.</summary>
    public ToothPair? DropPair => Set.DropPair;

    /// <summary>The final drive.</summary>
    public FinalDrive FinalDrive => Set.FinalDrive;

    /// <summary>Drop pair × final drive.</summary>
    public double Reduction => (DropPair?.Ratio ?? 1) * FinalDrive.Ratio;

    /// <summary>
    /// Whether the car comes to the end of every straight; if not, <see cref="StraightsTime"/> is that of the part driven and the
    /// candidate comes after all that do.
    /// </summary>
    public required bool IsFinished { get; init; }

    /// <summary>Time on the straights of one lap, shifts in corners included.</summary>
    public required Duration StraightsTime { get; init; }

    /// <summary>Time lost a lap against the fastest stocked set within the limits; below zero for a faster one past a limit or not in stock.</summary>
    public Duration LossToBest { get; init; }

    /// <summary>Time lost a lap against the ideal on the planned day; zero or more.</summary>
    public required Duration LossToIdeal { get; init; }

    /// <summary>Greatest speed on the lap.</summary>
    public required Speed TopSpeed { get; init; }

    /// <summary>The straight on which it is reached.</summary>
    public required string TopSpeedStraight { get; init; }

    /// <summary>The gear in which it is reached, from 1.</summary>
    public required int TopSpeedGear { get; init; }

    /// <summary>Engine speed there.</summary>
    public required RotationalSpeed EngineSpeedAtTop { get; init; }

    /// <summary>Time on the limiter a lap.</summary>
    public required Duration OnLimiter { get; init; }

    /// <summary>Upshifts and downshifts made under power a lap, in corners too; those under braking not counted.</summary>
    public required int ShiftsPerLap { get; init; }

    /// <summary>The straights whose corner before them falls between gears or below the usable band.</summary>
    public required IReadOnlyList<Straight> CornersBetweenGears { get; init; }

    /// <summary>Whether it is in stock; false for a set that was asked about besides.</summary>
    public bool IsStocked { get; init; } = true;

    /// <summary>The limits that it passes on the planned day or a changed one, each once; empty if it may be used.</summary>
    public IReadOnlyList<PassedLimit> PassedLimits { get; init; } = [];

    /// <summary>Whether it comes to the end of the lap within every limit, on the planned day and on each changed one.</summary>
    public bool IsUsable => IsFinished && PassedLimits.Count == 0;

    /// <summary>What the gearing runs against on its day.</summary>
    public IReadOnlyList<GearingCaution> Cautions { get; init; } = [];

    /// <summary>What did not come out as asked, straight by straight.</summary>
    public required IReadOnlyList<GearingFault> Faults { get; init; }

    /// <summary>The pair and the final drive in words.</summary>
    public override string ToString() => DropPair is null ? FinalDrive.ToString() : $"{DropPair} with {FinalDrive}";
}
