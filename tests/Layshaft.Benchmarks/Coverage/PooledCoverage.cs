using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Benchmarks.Coverage;

/// <summary>
/// How often a part with one or two readings passes its limit before "look again", by simulation: its slope rests on other units of its type,
/// each with a rate and a size when new of its own.
/// </summary>
internal static class PooledCoverage
{
    private const double Uncertainty = 0.02; // standard uncertainty of a reading, as a share of the wear allowance
    private const double NewSizes = 0.03; // standard deviation of sizes when new, as a share of the wear allowance

    /// <summary>Prints the table as Markdown.</summary>
    /// <param name="samples">Parts for each row.</param>
    public static void Run(int samples)
    {
        Console.WriteLine("| wear grows with usage to the power | other units | their rates differ by | own readings | trend given | past the limit before look again | look now | look again / remaining life, median | bounds of the ratio to the median hold |");
        Console.WriteLine("|--:|--:|--:|--:|--:|--:|--:|--:|--:|");
        foreach (var power in new[] { 0.7, 1, 1.5, 2 })
        {
            foreach (var units in new[] { 5, 10, 20 })
            {
                foreach (var spread in new[] { 0.2, 0.5 })
                {
                    foreach (var count in new[] { 1, 2 })
                    {
                        Console.WriteLine(Row(power, units, spread, count, samples));
                    }
                }
            }
        }
    }

    private static string Row(double power, int units, double spread, int count, int samples)
    {
        var random = new Random(units);
        var (parts, late, now, compared, outside) = (0, 0, 0, 0, 0);
        var shares = new List<double>();
        for (var sample = 0; sample < samples; sample++)
        {
            var own = Part(random, power, spread, count, out var life, out var rate);
            WearReading[][] others = [.. Enumerable.Range(0, units).Select(_ => Part(random, power, spread, 1 + random.Next(4), out double _, out double _))];
            if (own[^1].Use >= life)
            {
                continue;
            }

            parts++;
            if (TypeWear.Of(others, Uncertainty)?.Rounded() is not { } type)
            {
                continue;
            }

            if (RelativeRate.Of(own, type, Uncertainty) is { } relative)
            {
                compared++;
                outside += rate < relative.Bounds.Lower || rate > relative.Bounds.Upper ? 1 : 0; // the median of all units is 1
            }

            if (PooledTrend.Of(own, WearLimit.Share, type, new() { ReadingUncertainty = Uncertainty }) is { } trend)
            {
                late += own[^1].Use + trend.LookAgainWithin > life ? 1 : 0;
                now += trend.LookAgainWithin == 0 ? 1 : 0;
                shares.Add(trend.LookAgainWithin / (life - own[^1].Use));
            }
        }

        shares.Sort();
        var said = (double)shares.Count;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {power:0.0} | {units} | {Math.Exp(spread) - 1:0 %} | {count} | {said / parts:0 %} | {late / said:0.0 %} | {now / said:0 %} | {shares[shares.Count / 2]:0.00} | {1 - (double)outside / compared:0.0 %} |");
    }

    // Lives of 100 h in the middle; the last reading between a quarter and three quarters of what a part of that type lasts.
    private static WearReading[] Part(Random random, double power, double spread, int count, out double life, out double rate)
    {
        rate = Math.Exp(spread * Normal(random));
        var (start, last) = (NewSizes * Normal(random), 25 + 50 * random.NextDouble());
        life = 100 * Math.Pow((1 - start) / rate, 1 / power);
        var use = 0.0;
        var readings = new WearReading[count];
        for (var i = 0; i < count; i++)
        {
            use += last / count * (0.6 + 0.8 * random.NextDouble());
            readings[i] = new WearReading(use, start + rate * Math.Pow(use / 100, power) + Uncertainty * Normal(random));
        }

        return readings;
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
