namespace Layshaft.Engineering.Life;

/// <summary>What does not fit together in a part's history.</summary>
public enum LedgerContradictionKind
{
    /// <summary>A date lies before that of an earlier entry.</summary>
    DateWentBack,

    /// <summary>A unit's use is less than at an earlier job, or a part brings less than it is known to have run.</summary>
    UseWentBack,

    /// <summary>A use is negative or not a number.</summary>
    UseUnusable,

    /// <summary>A unit is counted in hours in one job and in kilometres or events in another.</summary>
    MeasureChanged,

    /// <summary>A part is fitted to a unit while it is still in another.</summary>
    InTwoUnitsAtOnce,

    /// <summary>A part is fitted where another still sits.</summary>
    PlaceTaken,

    /// <summary>A part is fitted where it already sits.</summary>
    FittedTwice,

    /// <summary>A part is called new that ran before, or was renewed before and is back.</summary>
    NewPartHasAPast,

    /// <summary>A part was renewed that was never fitted.</summary>
    RenewedButNeverFitted,

    /// <summary>A part was taken out that was never fitted.</summary>
    RemovedButNeverFitted,

    /// <summary>A part was moved that was never fitted.</summary>
    MovedButNeverFitted,

    /// <summary>The part in a place bears another serial than the one recorded.</summary>
    SerialDisagrees,

    /// <summary>Something between two entries is missing: use not accounted for, or a job not recorded.</summary>
    Gap,
}

/// <summary>One contradiction in a part's history.</summary>
/// <param name="Kind">What does not fit.</param>
/// <param name="Events">Indices of the events that do not fit together, in order; the last is the one at which it shows.</param>
/// <param name="Words">What is wrong and what to write instead, for the technician.</param>
public sealed record LedgerContradiction(LedgerContradictionKind Kind, IReadOnlyList<int> Events, string Words);
