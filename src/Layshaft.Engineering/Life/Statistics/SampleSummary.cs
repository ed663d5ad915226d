namespace Layshaft.Engineering.Life;

/// <summary>Count, mean and standard deviation of a set of values, in the unit of the values.</summary>
/// <param name="Count">Number of values, at least 1.</param>
/// <param name="Mean">Arithmetic mean.</param>
/// <param name="StandardDeviation">Sample standard deviation with n − 1; <c>null</c> for a single value.</param>
public sealed record SampleSummary(int Count, double Mean, double? StandardDeviation)
{
    /// <summary>Works out the summary with compensated, centred arithmetic.</summary>
    /// <param name="values">The values, all finite, at least one.</param>
    /// <returns>The summary.</returns>
    /// <exception cref="ArgumentException">There are no values.</exception>
    public static SampleSummary Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            throw new ArgumentException("At least one value is needed.", nameof(values));
        }

        var mean = CompensatedSum.MeanOf(values);
        if (values.Count == 1)
        {
            return new SampleSummary(1, mean, null);
        }

        var squares = CompensatedSum.Of(values.Select(value => (value - mean) * (value - mean)));
        return new SampleSummary(values.Count, mean, Math.Sqrt(squares / (values.Count - 1)));
    }
}
