using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>What a trace shows. Immutable.</summary>
public sealed record TraceFigures
{
    /// <summary>Rows that were used.</summary>
    public required long Rows { get; init; }

    /// <summary>Rows left out because time, speed or engine speed is missing.</summary>
    public required long RowsMissing { get; init; }

    /// <summary>Rows left out because their time is before that of the row above.</summary>
    public required long RowsOutOfOrder { get; init; }

    /// <summary>Rows left out because they repeat the time of the row above.</summary>
    public required long RowsRepeated { get; init; }

    /// <summary>Places where rows are missing for more than one second.</summary>
    public required int Gaps { get; init; }

    /// <summary>Time of all gaps; it is part of no other time.</summary>
    public required Duration GapTime { get; init; }

    /// <summary>Time of the first row, by the trace's own clock.</summary>
    public required Duration Start { get; init; }

    /// <summary>Time that was recorded, gaps not counted.</summary>
    public required Duration Recorded { get; init; }

    /// <summary>Time with the engine running: 400 rpm or more.</summary>
    public required Duration EngineRunning { get; init; }

    /// <summary>Time on the move: 1 m/s or more.</summary>
    public required Duration Moving { get; init; }

    /// <summary>Distance by the recorded speed.</summary>
    public required Length Distance { get; init; }

    /// <summary>The share of <see cref="Distance"/> that was travelled in gaps of up to ten seconds, from the speeds on both sides.</summary>
    public required Length Bridged { get; init; }

    /// <summary>Greatest recorded speed.</summary>
    public required Speed TopSpeed { get; init; }

    /// <summary>Where that was; null without any row.</summary>
    public required TracePlace? TopSpeedAt { get; init; }

    /// <summary>The gears. When they are not found there are no shifts and no time in gear.</summary>
    public required GearFit GearFit { get; init; }

    /// <summary>Share of the rows in gear for which the car's own gear channel says the same; null without one.</summary>
    public required double? GearColumnAgrees { get; init; }

    /// <summary>Slip; null when the trace cannot show it.</summary>
    public required SlipSeen? Slip { get; init; }

    /// <summary>Time in each gear, first gear first; empty when the gears are not found.</summary>
    public required IReadOnlyList<Duration> TimeInGear { get; init; }

    /// <summary>Time at the limiter.</summary>
    public required Duration AtLimiter { get; init; }

    /// <summary>Engine speeds above the limiter, in order.</summary>
    public required IReadOnlyList<OverRev> OverRevs { get; init; }

    /// <summary>What laps were told by.</summary>
    public required LapBasis LapBasis { get; init; }

    /// <summary>The whole laps, in order.</summary>
    public required IReadOnlyList<LapSeen> Laps { get; init; }

    /// <summary>Each corner each time, in order.</summary>
    public required IReadOnlyList<CornerSeen> Corners { get; init; }

    /// <summary>Every shift, in order.</summary>
    public required IReadOnlyList<ShiftSeen> Shifts { get; init; }

    /// <summary>The fastest whole lap, a point every 12 m; empty without one.</summary>
    public required IReadOnlyList<LapPoint> BestLapLine { get; init; }

    /// <summary>The fastest whole lap without gaps; null without one.</summary>
    public LapSeen? BestLap => Laps.Where(l => !l.HasGaps).MinBy(l => l.Time);
}
