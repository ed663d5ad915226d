using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One drop pair with one final drive over a whole venue.</summary>
public sealed record GearingCandidate
{
    /// <summary>The drop pair; null for none.</summary>
    public required ToothPair? DropPair { get; init; }

    /// <summary>The final drive.</summary>
    public required FinalDrive FinalDrive { get; init; }

    /// <summary>Drop pair × final drive.</summary>
    public double Reduction => (DropPair?.Ratio ?? 1) * FinalDrive.Ratio;

    /// <summary>
    /// Whether the car comes to the end of every straight; if not, <see cref="StraightsTime"/> is that of the part driven and the
    /// candidate stands behind all that do.
    /// </summary>
    public required bool IsFinished { get; init; }

    /// <summary>Time on the straights of one lap, shifts in corners included.</summary>
    public required Duration StraightsTime { get; init; }

    /// <summary>Time lost a lap against the fastest candidate; zero or more.</summary>
    public Duration LossToBest { get; init; }

    /// <summary>Time lost a lap against the ideal; zero or more.</summary>
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
    public required IReadOnlyList<string> CornersBetweenGears { get; init; }

    /// <summary>What the gearing runs against.</summary>
    public IReadOnlyList<GearingCaution> Cautions { get; init; } = [];

    /// <summary>What did not come out as asked, straight by straight.</summary>
    public required IReadOnlyList<GearingFault> Faults { get; init; }

    /// <summary>The pair and the final drive in words.</summary>
    public override string ToString() => DropPair is null ? FinalDrive.ToString() : $"{DropPair} with {FinalDrive}";
}
