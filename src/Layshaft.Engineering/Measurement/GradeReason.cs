namespace Layshaft.Engineering.Measurement;

/// <summary>Why a part got the grade that was worked out for it.</summary>
public enum GradeReason
{
    /// <summary>Inside its limit with most of its allowance left.</summary>
    WithinAllowance,

    /// <summary>Has used as much of its allowance as the policy lets go unwatched.</summary>
    AllowanceWatched,

    /// <summary>Has used as much of its allowance as the policy lets it use.</summary>
    AllowanceUsed,

    /// <summary>The limit lies within the uncertainty of the measurement.</summary>
    TooCloseToCall,

    /// <summary>Proven outside its limit.</summary>
    OutsideLimit,
}
