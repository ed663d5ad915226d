namespace Layshaft.Engineering.Life;

/// <summary>What a comparison of groups says: a <see cref="LifeDifference"/> or the reason why not.</summary>
public abstract record LifeComparison
{
    /// <summary>
    /// Failures in each group below which nothing is said: five is the usual rule for a chi-squared approximation to
    /// counts (common practice, no source).
    /// </summary>
    public const int LeastFailures = 5;

    /// <summary>
    /// Compares groups by the likelihood ratio of two models: one Weibull distribution for all, or one shape with a scale for each
    /// group (Meeker and Escobar, Statistical Methods for Reliability Data, 1998, ch. 17, from memory).
    /// </summary>
    /// <param name="groups">The groups, all counted in one measure. Those with fewer failures than needed are left out.</param>
    /// <returns>The result, or why there is none.</returns>
    /// <exception cref="ArgumentException">The groups are counted in different measures.</exception>
    public static LifeComparison Of(IReadOnlyList<LifeSample> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.Select(group => group.Measure).Distinct().Count() > 1)
        {
            throw new ArgumentException("Lives counted in different measures cannot be compared.", nameof(groups));
        }

        LifeSample[] compared = [.. groups.Where(group => group.Failures >= LeastFailures)];
        if (compared.Length < 2)
        {
            return new NoComparison(groups.Sum(group => group.Failures));
        }

        WeibullLikelihood[] apart = [.. compared.Select(group => new WeibullLikelihood(group))];
        if (Weibull.Fit(LifeSample.Of(compared[0].Measure, compared.SelectMany(group => group.Lives))) is not WeibullFit together
            || WeibullLikelihood.RootOverShape(shape => apart.Sum(group => group.ProfileScore(shape))) is not { } shape)
        {
            return new NoComparison(groups.Sum(group => group.Failures));
        }

        var statistic = Math.Max(0, 2 * (apart.Sum(group => group.ProfileOfShape(shape)) - together.LogLikelihood));
        return new LifeDifference(statistic, compared.Length - 1, Quantiles.ChiSquaredUpperTail(statistic, compared.Length - 1));
    }
}

/// <summary>The groups are not compared: too few failures for the test's approximation to mean anything.</summary>
/// <param name="Failures">Failures over all groups.</param>
public sealed record NoComparison(int Failures) : LifeComparison;

/// <summary>How far the lives of groups differ.</summary>
/// <param name="Statistic">The likelihood ratio statistic.</param>
/// <param name="DegreesOfFreedom">Number of groups compared less one.</param>
/// <param name="PValue">Probability of a difference at least as large if all groups lived alike.</param>
public sealed record LifeDifference(double Statistic, int DegreesOfFreedom, double PValue) : LifeComparison;
