using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Layshaft.Engineering.Life;

/// <summary>
/// Quantiles and tail probabilities of the normal, Student's t and chi-squared distributions. The library's own
/// inverses are a starting point; Newton steps on the tail probability carry them to full double precision.
/// </summary>
public static class Quantiles
{
    private const int LargestStepCount = 60;

    /// <summary>Quantile of the standard normal distribution.</summary>
    /// <param name="probability">Lower-tail probability, strictly between 0 and 1.</param>
    /// <returns>The value that a standard normal variable stays below with that probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside (0, 1).</exception>
    public static double Normal(double probability)
    {
        CheckProbability(probability);
        return probability > 0.5
            ? -Normal(1 - probability)
            : -Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * probability);
    }

    /// <summary>Quantile of Student's t distribution.</summary>
    /// <param name="probability">Lower-tail probability, strictly between 0 and 1.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, greater than 0.</param>
    /// <returns>The value that t stays below with that probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside (0, 1) or the degrees of freedom are not positive.</exception>
    public static double StudentT(double probability, double degreesOfFreedom)
    {
        CheckProbability(probability);
        CheckDegreesOfFreedom(degreesOfFreedom);
        if (probability == 0.5)
        {
            return 0;
        }

        var tail = Math.Min(probability, 1 - probability);
        var logNorm = SpecialFunctions.GammaLn((degreesOfFreedom + 1) / 2) - SpecialFunctions.GammaLn(degreesOfFreedom / 2)
            - 0.5 * Math.Log(degreesOfFreedom * Math.PI);
        double UpperTail(double t) => StudentTTwoSided(t, degreesOfFreedom) / 2;
        double Density(double t) => Math.Exp(logNorm - (degreesOfFreedom + 1) / 2 * Math.Log(1 + t * t / degreesOfFreedom));
        var quantile = Refine(-Normal(tail), tail, UpperTail, Density);
        return probability < 0.5 ? -quantile : quantile;
    }

    /// <summary>Quantile of the chi-squared distribution.</summary>
    /// <param name="probability">Lower-tail probability, strictly between 0 and 1.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, greater than 0.</param>
    /// <returns>The value that chi-squared stays below with that probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside (0, 1) or the degrees of freedom are not positive.</exception>
    public static double ChiSquared(double probability, double degreesOfFreedom)
    {
        CheckProbability(probability);
        CheckDegreesOfFreedom(degreesOfFreedom);
        var distribution = new ChiSquared(degreesOfFreedom);
        return Refine(
            distribution.InverseCumulativeDistribution(probability),
            1 - probability,
            x => ChiSquaredUpperTail(x, degreesOfFreedom),
            distribution.Density);
    }

    /// <summary>Probability that |t| is at least as large as the value given.</summary>
    /// <param name="t">The statistic.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, greater than 0.</param>
    /// <returns>The two-sided tail probability, 0 to 1, accurate also where it is tiny.</returns>
    public static double StudentTTwoSided(double t, double degreesOfFreedom) =>
        SpecialFunctions.BetaRegularized(degreesOfFreedom / 2, 0.5, degreesOfFreedom / (degreesOfFreedom + t * t));

    /// <summary>Probability that chi-squared is at least as large as the value given.</summary>
    /// <param name="value">The statistic, not negative.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom, greater than 0.</param>
    /// <returns>The upper-tail probability, 0 to 1.</returns>
    public static double ChiSquaredUpperTail(double value, double degreesOfFreedom) =>
        value <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(degreesOfFreedom / 2, value / 2);

    // Newton on the logarithm of the upper tail: the tail is log-concave enough beyond the median that steps do not run away.
    private static double Refine(double start, double upperTail, Func<double, double> tailAt, Func<double, double> densityAt)
    {
        var x = start;
        for (var step = 0; step < LargestStepCount; step++)
        {
            var tail = tailAt(x);
            var next = x + tail * Math.Log(tail / upperTail) / densityAt(x);
            if (!double.IsFinite(next) || Math.Abs(next - x) <= 1e-15 * Math.Abs(x))
            {
                break;
            }

            x = next;
        }

        return x;
    }

    private static void CheckProbability(double probability)
    {
        if (!(probability > 0 && probability < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability here lies strictly between 0 and 1.");
        }
    }

    private static void CheckDegreesOfFreedom(double degreesOfFreedom)
    {
        if (!(degreesOfFreedom > 0 && double.IsFinite(degreesOfFreedom)))
        {
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Degrees of freedom are a positive number.");
        }
    }
}
