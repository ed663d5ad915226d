namespace Layshaft.Engineering.Life;

/// <summary>What can be said of the life of a kind of part: a <see cref="WeibullFit"/> or the reason why not.</summary>
public abstract record LifeEstimate;

/// <summary>Nothing is said, and why.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Units">Number of units looked at.</param>
/// <param name="Failures">Number of them that failed.</param>
/// <param name="LeastFailures">Number of failures that would have been enough.</param>
public sealed record LifeUnsaid(LifeUnsaidReason Reason, int Units, int Failures, int LeastFailures) : LifeEstimate
{
    /// <summary>The reason in one sentence.</summary>
    public string Words => FormattableString.Invariant(Reason == LifeUnsaidReason.TooFewFailures
        ? (FormattableString)$"Too few to say: {Failures} of {Units} failed so far, at least {LeastFailures} failures are needed."
        : $"Not to be said: all {Failures} failures came at the same use, and none of the {Units} units ran longer.");
}

/// <summary>Why a life is not estimated.</summary>
public enum LifeUnsaidReason
{
    /// <summary>Fewer failures than asked for.</summary>
    TooFewFailures,

    /// <summary>All failures at one use with nothing running longer: the likelihood has no maximum.</summary>
    NoSpread,
}
