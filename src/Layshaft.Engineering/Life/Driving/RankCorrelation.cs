namespace Layshaft.Engineering.Life;

/// <summary>Spearman's rank correlation with its p-value.</summary>
/// <param name="Count">Number of pairs.</param>
/// <param name="Rho">Correlation of the ranks, −1 to 1 (ties share the mean rank); <c>null</c> when one side is all ties.</param>
/// <param name="PValuePositive">
/// Probability of a correlation at least this large by chance: by counting all orders up to <see cref="LargestExact"/>
/// pairs, by the t approximation beyond; <c>null</c> without <paramref name="Rho"/>.
/// </param>
public sealed record RankCorrelation(int Count, double? Rho, double? PValuePositive)
{
    /// <summary>Largest number of pairs for which all orders are counted (8! = 40 320).</summary>
    public const int LargestExact = 8;

    private const double Rounding = 1e-9;

    /// <summary>Works out the correlation.</summary>
    /// <param name="first">One value of each pair.</param>
    /// <param name="second">The other, in the same order.</param>
    /// <returns>The correlation.</returns>
    /// <exception cref="ArgumentException">The lists differ in length.</exception>
    public static RankCorrelation Of(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Count != second.Count)
        {
            throw new ArgumentException("There must be as many values on both sides.", nameof(second));
        }

        var (x, y) = (CentredRanks(first), CentredRanks(second));
        var size = Math.Sqrt(x.Sum(rank => rank * rank) * y.Sum(rank => rank * rank));
        if (!(size > 0))
        {
            return new RankCorrelation(first.Count, null, null);
        }

        var product = Product(x, y);
        var rho = Math.Clamp(product / size, -1, 1);
        var p = first.Count <= LargestExact ? ShareOfOrders(x, y, product - Rounding) : ByT(rho, first.Count);
        return new RankCorrelation(first.Count, rho, p);
    }

    private static double[] CentredRanks(IReadOnlyList<double> values)
    {
        // Mean rank of ties: those below, and half of the others alike.
        var centre = (values.Count + 1) / 2.0;
        return [.. values.Select(value => values.Count(other => other < value) + (values.Count(other => other == value) + 1) / 2.0 - centre)];
    }

    private static double Product(double[] x, double[] y) => x.Zip(y, (a, b) => a * b).Sum();

    private static double ShareOfOrders(double[] x, double[] y, double threshold)
    {
        var (reached, all) = (0, 0);
        var order = (double[])y.Clone();
        Permute(0);
        return (double)reached / all;

        void Permute(int from)
        {
            if (from == order.Length)
            {
                all++;
                reached += Product(x, order) >= threshold ? 1 : 0;
                return;
            }

            for (var index = from; index < order.Length; index++)
            {
                (order[from], order[index]) = (order[index], order[from]);
                Permute(from + 1);
                (order[from], order[index]) = (order[index], order[from]);
            }
        }
    }

    private static double ByT(double rho, int count)
    {
        if (Math.Abs(rho) == 1)
        {
            return rho > 0 ? 0 : 1;
        }

        var twoSided = Quantiles.StudentTTwoSided(rho * Math.Sqrt((count - 2) / (1 - rho * rho)), count - 2);
        return rho > 0 ? twoSided / 2 : 1 - twoSided / 2;
    }
}
