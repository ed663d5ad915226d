namespace Layshaft.Engineering.Life;

/// <summary>Which gears are worn most. What each points to is common practice of the trade, no source.</summary>
public enum WearPattern
{
    /// <summary>Too few gears measured.</summary>
    TooFewToSay,

    /// <summary>No gear is worn enough to read anything from it.</summary>
    HardlyWorn,

    /// <summary>
    /// First gear and reverse worst: they are selected at a standstill, with the layshaft still turning; points to clutch
    /// drag, or to selecting before the shafts have stopped.
    /// </summary>
    LowGearsAndReverseWorst,

    /// <summary>One gear far worse than all others: points to that gear's own selection (rod, fork, detent, ring) or one habit, less to driving in general.</summary>
    OneGearOnly,

    /// <summary>All gears alike: points to what all shifts share, the cut, the linkage, the oil.</summary>
    AllAlike,

    /// <summary>None of these.</summary>
    NoPattern,
}

/// <summary>Which flanks are worn most. What each points to is common practice of the trade, no source.</summary>
public enum WornSide
{
    /// <summary>Too few gears with both sides measured, or hardly worn.</summary>
    TooFewToSay,

    /// <summary>Drive side: points to upshifts made under power or without a full cut, and to slow, hesitant selection.</summary>
    DriveSide,

    /// <summary>Coast side: points to downshifts made without matching revs.</summary>
    CoastSide,

    /// <summary>Neither side clearly.</summary>
    BothAlike,
}
