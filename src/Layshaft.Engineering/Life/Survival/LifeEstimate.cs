namespace Layshaft.Engineering.Life;

/// <summary>What can be said of the life of a kind of part: a <see cref="WeibullFit"/> or the reason why not.</summary>
public abstract record LifeEstimate;

/// <summary>Nothing is said, and why.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Units">Number of parts looked at.</param>
/// <param name="Failures">Number of them that failed.</param>
public sealed record LifeUnsaid(LifeUnsaidReason Reason, int Units, int Failures) : LifeEstimate;

/// <summary>Why a life is not estimated.</summary>
public enum LifeUnsaidReason
{
    /// <summary>Fewer parts or failures than <see cref="Weibull.LeastParts"/> and <see cref="Weibull.LeastFailures"/>.</summary>
    TooFew,

    /// <summary>The inspections do not tell when failures begin to come: the likelihood has no maximum.</summary>
    NoSpread,
}
