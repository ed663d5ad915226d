namespace Layshaft.Engineering.Life;

/// <summary>What a comparison of groups says: a <see cref="LogRankTest"/> or the reason why not.</summary>
public abstract record GroupComparison;

/// <summary>The groups are not compared: too few failures for the test's approximation to mean anything.</summary>
/// <param name="Failures">Failures over all groups.</param>
/// <param name="LeastFailures">Failures that would have been enough.</param>
/// <param name="GroupsWithLives">Groups that had any life to compare; at least two are needed.</param>
public sealed record ComparisonUnsaid(int Failures, int LeastFailures, int GroupsWithLives) : GroupComparison
{
    /// <summary>The reason in one sentence.</summary>
    public string Words => GroupsWithLives < 2
        ? "Nothing to compare: fewer than two groups have lives that overlap."
        : FormattableString.Invariant($"Too few to compare: {Failures} failures in all, at least {LeastFailures} are needed.");
}

/// <summary>One group in a log-rank test.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="Units">Number of lives.</param>
/// <param name="Observed">Failures seen.</param>
/// <param name="Expected">Failures expected if all groups lived alike.</param>
public sealed record LogRankGroup(string Name, int Units, int Observed, double Expected);

/// <summary>The log-rank test of equal survival (Mantel 1966; Peto and Peto 1972).</summary>
/// <param name="ChiSquared">The statistic.</param>
/// <param name="DegreesOfFreedom">Number of groups compared less one.</param>
/// <param name="PValue">Probability of a difference at least as large if all groups lived alike.</param>
/// <param name="Groups">Observed and expected failures by group.</param>
public sealed record LogRankTest(
    double ChiSquared, int DegreesOfFreedom, double PValue, IReadOnlyList<LogRankGroup> Groups) : GroupComparison;
