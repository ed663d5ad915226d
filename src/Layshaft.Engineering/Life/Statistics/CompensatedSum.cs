namespace Layshaft.Engineering.Life;

/// <summary>
/// A running sum that keeps the low-order bits that plain addition drops (Kahan 1965, in Neumaier's form of 1974),
/// so that a thousand readings near one million still give their mean to the last digit.
/// </summary>
internal struct CompensatedSum
{
    private double sum;
    private double lost;

    // Past the largest double nothing is left to correct, and infinity less infinity would be no number.
    public readonly double Value => double.IsInfinity(sum) ? sum : sum + lost;

    public void Add(double term)
    {
        var next = sum + term;
        lost += Math.Abs(sum) >= Math.Abs(term) ? (sum - next) + term : (term - next) + sum;
        sum = next;
    }

    public static double Of(IEnumerable<double> terms)
    {
        var total = new CompensatedSum();
        foreach (var term in terms)
        {
            total.Add(term);
        }

        return total.Value;
    }

    /// <summary>The mean, corrected once by the mean of what is left over.</summary>
    public static double MeanOf(IReadOnlyList<double> values)
    {
        var first = Of(values) / values.Count;
        return first + Of(values.Select(value => value - first)) / values.Count;
    }
}
