using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Benchmarks.Coverage;

/// <summary>
/// How often a part passes its limit before "look again", by simulation: wear that grows with a known power of usage, read three to
/// eight times before three quarters of the life are over.
/// </summary>
internal static class WearCoverage
{
    private const double Uncertainty = 0.02; // standard uncertainty of a reading, as a share of the wear allowance

    /// <summary>Prints the table as Markdown.</summary>
    /// <param name="samples">Parts for each row.</param>
    public static void Run(int samples)
    {
        Console.WriteLine("| wear grows with usage to the power | readings | scatter of readings / stated uncertainty | trend given | past the limit before look again | look now | look again / remaining life, median |");
        Console.WriteLine("|--:|--:|--:|--:|--:|--:|--:|");
        foreach (var power in new[] { 0.7, 1, 1.5, 2, 2.5 })
        {
            foreach (var count in new[] { 3, 4, 6, 8 })
            {
                foreach (var scatter in new[] { 1.0, 2 })
                {
                    Console.WriteLine(Row(power, count, scatter, samples));
                }
            }
        }
    }

    private static string Row(double power, int count, double scatter, int samples)
    {
        var random = new Random(count);
        var (parts, late, now) = (0, 0, 0);
        var shares = new List<double>();
        for (var sample = 0; sample < samples; sample++)
        {
            var (life, use) = (60 + random.NextDouble() * 80, 0.0);
            var readings = new List<WearReading>();
            for (var i = 0; i < count; i++)
            {
                use += life * 0.75 / count * (0.6 + 0.8 * random.NextDouble());
                readings.Add(new WearReading(use, Math.Pow(use / life, power) + scatter * Uncertainty * Normal(random)));
            }

            if (use >= life)
            {
                continue;
            }

            parts++;
            if (WearTrend.Of(readings, WearLimit.Share, new() { ReadingUncertainty = Uncertainty }) is WearTrendLine trend)
            {
                late += use + trend.LookAgainWithin > life ? 1 : 0;
                now += trend.LookAgainWithin == 0 ? 1 : 0;
                shares.Add(trend.LookAgainWithin / (life - use));
            }
        }

        shares.Sort();
        var said = (double)shares.Count;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {power:0.0} | {count} | {scatter:0} | {said / parts:0 %} | {late / said:0.0 %} | {now / said:0 %} | {shares[shares.Count / 2]:0.00} |");
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
