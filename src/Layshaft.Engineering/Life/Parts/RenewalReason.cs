namespace Layshaft.Engineering.Life;

/// <summary>Why a part was renewed. Only a renewal for its condition is a failure; one made as a precaution cuts the life short.</summary>
public enum RenewalReason
{
    /// <summary>Not recorded.</summary>
    NotRecorded,

    /// <summary>It was worn to its limit, damaged or broken.</summary>
    Condition,

    /// <summary>It was still good: renewed by schedule, with another part, or at the customer's wish.</summary>
    Precaution,
}
