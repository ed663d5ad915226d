namespace Layshaft.Engineering.Life;

/// <summary>One entry of a part's history, as a job records it.</summary>
public sealed record FittingEvent
{
    /// <summary>The part; for <see cref="FittingKind.Renewed"/> the new one (the old one is the one in its place).</summary>
    public required PartIdentity Part { get; init; }

    /// <summary>Serial number of the unit; for <see cref="FittingKind.Moved"/> the one that receives the part.</summary>
    public required string Unit { get; init; }

    /// <summary>Date of the job.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The unit's own use at the job.</summary>
    public required Use UnitUse { get; init; }

    /// <summary>What happened.</summary>
    public required FittingKind Kind { get; init; }

    /// <summary>Use that the part brings with it, if stated; for parts fitted used, moved, found in place, or renewed with a used part.</summary>
    public Use? CarriedUse { get; init; }

    /// <summary>For <see cref="FittingKind.Moved"/>: the unit it came from.</summary>
    public string? FromUnit { get; init; }

    /// <summary>For <see cref="FittingKind.Moved"/>: that unit's use when the part left it.</summary>
    public Use? FromUnitUse { get; init; }

    /// <summary>For <see cref="FittingKind.Renewed"/>: why.</summary>
    public RenewalReason Reason { get; init; }
}
