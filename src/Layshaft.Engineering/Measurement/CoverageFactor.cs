using MathNet.Numerics.Distributions;

namespace Layshaft.Engineering.Measurement;

/// <summary>How many standard uncertainties make an interval of a given confidence (JCGM 100:2008, 6.3 and annex G).</summary>
public static class CoverageFactor
{
    /// <summary>The confidence used where nothing else is said: 0.95.</summary>
    public const double UsualConfidence = 0.95;

    /// <summary>
    /// Two-sided Student t factor, for whole degrees of freedom and between them (JCGM 100, G.4.1).
    /// </summary>
    /// <param name="degreesOfFreedom">1 or more; infinite gives the normal distribution.</param>
    /// <param name="confidence">Above 0 and below 1.</param>
    /// <returns>The factor, above 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double For(double degreesOfFreedom, double confidence = UsualConfidence)
    {
        if (!(confidence > 0 && confidence < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "a confidence lies between 0 and 1");
        }

        if (!(degreesOfFreedom >= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "degrees of freedom are 1 or more");
        }

        var upperTail = 0.5 + (confidence / 2);
        return degreesOfFreedom > 1e6 ? Normal.InvCDF(0, 1, upperTail) : StudentT.InvCDF(0, 1, degreesOfFreedom, upperTail);
    }
}
