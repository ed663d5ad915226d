using MathNet.Numerics.Distributions;

namespace Layshaft.Engineering.Measurement;

/// <summary>
/// Grubbs' test for one outlying reading, high or low (ASTM E178; ISO 5725-2:1994, 7.3.4). It flags; it never removes:
/// a reading is dropped only by the person who took it, with a reason.
/// </summary>
/// <param name="Status">What the test says.</param>
/// <param name="SuspectIndex">Place of the most extreme reading, counted from 0; <see langword="null"/> when not tested.</param>
/// <param name="Statistic">G, distance of the most extreme reading from the mean in standard deviations; 0 when not tested.</param>
public sealed record GrubbsTest(OutlierStatus Status, int? SuspectIndex, double Statistic)
{
    /// <summary>Whether the reading deserves a second look: a straggler or an outlier.</summary>
    public bool IsSuspect => Status is OutlierStatus.Straggler or OutlierStatus.Outlier;

    /// <summary>Tests the most extreme of some readings at 5 % and 1 %, two-sided.</summary>
    /// <param name="readings">Readings in one unit.</param>
    /// <param name="resolution">
    /// Smallest step of the instrument in that unit, 0 or more. A reading no further than one step from its neighbour is
    /// never suspect: two equal readings and one a step away give the largest possible G of three readings.
    /// </param>
    /// <returns>The verdict on the most extreme reading.</returns>
    public static GrubbsTest Of(IReadOnlyList<double> readings, double resolution = 0)
    {
        var statistics = SampleStatistics.Of(readings);
        if (statistics.Count < 3 || statistics.StandardDeviation is not > 0)
        {
            return new GrubbsTest(OutlierStatus.NotTested, null, 0);
        }

        var suspect = Enumerable.Range(0, readings.Count).MaxBy(i => Math.Abs(readings[i] - statistics.Mean));
        var g = Math.Abs(readings[suspect] - statistics.Mean) / statistics.StandardDeviation.Value;
        var gap = readings.Where((_, i) => i != suspect).Min(r => Math.Abs(r - readings[suspect]));

        // Half a percent of a step forgives decimal readings their binary rounding.
        var status = gap <= resolution * 1.005 ? OutlierStatus.Unremarkable
            : g > CriticalValue(readings.Count, 0.01) ? OutlierStatus.Outlier
            : g > CriticalValue(readings.Count, 0.05) ? OutlierStatus.Straggler
            : OutlierStatus.Unremarkable;
        return new GrubbsTest(status, suspect, g);
    }

    /// <summary>
    /// Two-sided critical value of G, from the t distribution with n - 2 degrees of freedom at α/(2n) (Grubbs 1969).
    /// </summary>
    /// <param name="count">Number of readings, 3 or more.</param>
    /// <param name="significance">α, chance of suspecting a sound reading; above 0 and below 1.</param>
    /// <returns>The critical value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double CriticalValue(int count, double significance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 3);
        if (!(significance > 0 && significance < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(significance), significance, "a significance lies between 0 and 1");
        }

        var t = StudentT.InvCDF(0, 1, count - 2, significance / (2 * count));
        return (count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + (t * t)));
    }
}
