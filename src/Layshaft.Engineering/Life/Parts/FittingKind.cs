namespace Layshaft.Engineering.Life;

/// <summary>What happened to a part in a job.</summary>
public enum FittingKind
{
    /// <summary>Fitted new, with no use behind it.</summary>
    FittedNew,

    /// <summary>Fitted used; its carried use is stated, or known from the ledger, or unknown.</summary>
    FittedUsed,

    /// <summary>Taken out and kept.</summary>
    Removed,

    /// <summary>Taken out of one unit and fitted to the unit of the event.</summary>
    Moved,

    /// <summary>Taken out for good, another fitted in its place.</summary>
    Renewed,

    /// <summary>Seen in place and left there.</summary>
    StillRunning,
}
