using MathNet.Numerics.LinearAlgebra;

namespace Layshaft.Engineering.Life;

/// <summary>Compares the lives of groups by the log-rank test.</summary>
public static class LogRank
{
    /// <summary>
    /// Failures over all groups below which nothing is said: five per group on average is the usual rule for a
    /// chi-squared approximation to counts (common practice).
    /// </summary>
    public const int LeastFailuresPerGroup = 5;

    /// <summary>Compares groups.</summary>
    /// <param name="groups">The groups, all counted in one measure.</param>
    /// <param name="leastFailuresPerGroup">Mean number of failures per group below which nothing is said; at least 1.</param>
    /// <returns>A <see cref="LogRankTest"/>, or a <see cref="ComparisonUnsaid"/> with the reason.</returns>
    /// <exception cref="ArgumentException">The groups are counted in different measures.</exception>
    public static GroupComparison Compare(IReadOnlyList<LifeGroup> groups, int leastFailuresPerGroup = LeastFailuresPerGroup)
    {
        ArgumentNullException.ThrowIfNull(groups);
        ArgumentOutOfRangeException.ThrowIfLessThan(leastFailuresPerGroup, 1);
        if (groups.Select(group => group.Sample.Measure).Distinct().Count() > 1)
        {
            throw new ArgumentException("Lives counted in different measures cannot be compared.", nameof(groups));
        }

        var failures = groups.Sum(group => group.Sample.Failures);
        var (observed, expected, variance) = Sum(groups);
        int[] compared = [.. Enumerable.Range(0, groups.Count).Where(index => expected[index] > 0)];
        var least = leastFailuresPerGroup * Math.Max(2, compared.Length);
        if (compared.Length < 2 || failures < least)
        {
            return new ComparisonUnsaid(failures, least, compared.Length);
        }

        // The differences add to zero, so one group is left out; the rest have a covariance of full rank.
        var kept = compared[..^1];
        var difference = Vector<double>.Build.Dense(kept.Length, row => observed[kept[row]] - expected[kept[row]]);
        var covariance = Matrix<double>.Build.Dense(kept.Length, kept.Length, (row, column) => variance[kept[row], kept[column]]);
        if (!(covariance.Determinant() > 0))
        {
            return new ComparisonUnsaid(failures, least, 1);
        }

        var chiSquared = difference.DotProduct(covariance.Cholesky().Solve(difference));
        return new LogRankTest(
            chiSquared,
            kept.Length,
            Quantiles.ChiSquaredUpperTail(chiSquared, kept.Length),
            [.. groups.Select((group, index) => new LogRankGroup(group.Name, group.Sample.Lives.Count, observed[index], expected[index]))]);
    }

    private static (int[] Observed, double[] Expected, double[,] Variance) Sum(IReadOnlyList<LifeGroup> groups)
    {
        var observed = new int[groups.Count];
        var expected = new double[groups.Count];
        var variance = new double[groups.Count, groups.Count];
        var uses = groups.SelectMany(group => group.Sample.Lives).Where(life => life.Failed).Select(life => life.Amount).Distinct().Order();
        foreach (var use in uses)
        {
            double[] atRisk = [.. groups.Select(group => (double)group.Sample.Lives.Count(life => life.Amount >= use))];
            int[] failed = [.. groups.Select(group => group.Sample.Lives.Count(life => life.Failed && life.Amount == use))];
            var allAtRisk = atRisk.Sum();
            var allFailed = failed.Sum();
            var spread = allAtRisk > 1 ? allFailed * (allAtRisk - allFailed) / (allAtRisk - 1) : 0;
            for (var row = 0; row < groups.Count; row++)
            {
                observed[row] += failed[row];
                expected[row] += allFailed * atRisk[row] / allAtRisk;
                for (var column = 0; column < groups.Count; column++)
                {
                    var same = row == column ? 1 : 0;
                    variance[row, column] += spread * atRisk[row] / allAtRisk * (same - atRisk[column] / allAtRisk);
                }
            }
        }

        return (observed, expected, variance);
    }
}
