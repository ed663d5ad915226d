namespace Layshaft.Engineering.Measurement;

/// <summary>
/// Mean and scatter of repeated readings of one thing, all in one unit of the caller's choice
/// (JCGM 100:2008, 4.2: type A evaluation).
/// </summary>
/// <param name="Count">Number of readings, 1 or more.</param>
/// <param name="Mean">Arithmetic mean, in the unit of the readings.</param>
/// <param name="StandardDeviation">
/// Sample standard deviation with n - 1 in the denominator, in the unit of the readings;
/// <see langword="null"/> for a single reading, which says nothing about scatter.
/// </param>
public sealed record SampleStatistics(int Count, double Mean, double? StandardDeviation)
{
    /// <summary>Degrees of freedom of the standard deviation, n - 1.</summary>
    public int DegreesOfFreedom => Count - 1;

    /// <summary>
    /// Type A standard uncertainty of the mean, s/√n (JCGM 100, 4.2.3), in the unit of the readings;
    /// <see langword="null"/> for a single reading.
    /// </summary>
    public double? StandardUncertaintyOfMean => StandardDeviation / Math.Sqrt(Count);

    /// <summary>Works out mean and scatter.</summary>
    /// <param name="readings">One or more finite readings, all in one unit.</param>
    /// <returns>The statistics, in the unit of the readings.</returns>
    /// <exception cref="ArgumentException">There is no reading, or one of them is not a finite number.</exception>
    public static SampleStatistics Of(IReadOnlyList<double> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count == 0)
        {
            throw new ArgumentException("a measurement needs at least one reading", nameof(readings));
        }

        // Differences from the first reading keep every digit when a small scatter sits on a large value.
        var origin = readings[0];
        var sum = 0.0;
        foreach (var reading in readings)
        {
            if (!double.IsFinite(reading))
            {
                throw new ArgumentException($"reading {reading} is not a finite number", nameof(readings));
            }

            sum += reading - origin;
        }

        var mean = origin + (sum / readings.Count);
        if (readings.Count == 1)
        {
            return new SampleStatistics(1, mean, null);
        }

        var squares = readings.Sum(reading => (reading - mean) * (reading - mean));
        return new SampleStatistics(readings.Count, mean, Math.Sqrt(squares / (readings.Count - 1)));
    }
}
