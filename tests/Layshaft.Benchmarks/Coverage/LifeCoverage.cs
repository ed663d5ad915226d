using System.Globalization;
using Layshaft.Engineering.Life;

namespace Layshaft.Benchmarks.Coverage;

/// <summary>
/// How often the 95 % bounds of B10 hold the truth, by simulation: parts with a known Weibull life, some fitted used, in units that are
/// opened at irregular intervals, watched for different lengths of time.
/// </summary>
internal static class LifeCoverage
{
    private const double Scale = 60; // hours; only its ratio to the intervals matters

    /// <summary>Prints the table as Markdown.</summary>
    /// <param name="samples">Samples for each row.</param>
    public static void Run(int samples)
    {
        Console.WriteLine("| shape | parts | inspected every | failures, mean | estimated | B10, median of estimate / truth | lower bound above the truth | upper bound below it | bounds hold |");
        Console.WriteLine("|--:|--:|--:|--:|--:|--:|--:|--:|--:|");
        foreach (var shape in new[] { 1.5, 2.5, 4.0 })
        {
            foreach (var parts in new[] { 8, 12, 20, 50, 100 })
            {
                foreach (var hours in new[] { 10.0, 20, 30 })
                {
                    Console.WriteLine(Row(shape, parts, hours, samples));
                }
            }
        }
    }

    private static string Row(double shape, int parts, double hours, int samples)
    {
        var random = new Random(parts); // the same lives at each shape and interval, as far as they can be
        var truth = Scale * Math.Pow(-Math.Log(0.9), 1 / shape);
        var (failures, above, below) = (0.0, 0, 0);
        var ratios = new List<double>();
        for (var sample = 0; sample < samples; sample++)
        {
            var seen = LifeSample.Of(UseMeasure.Hours, Enumerable.Range(0, parts).Select(_ => Part(random, shape, hours)).OfType<ObservedLife>());
            if (Weibull.Fit(seen) is not WeibullFit fit)
            {
                continue;
            }

            var bounds = fit.LifeBounds(0.1);
            ratios.Add(fit.LifeAt(0.1) / truth);
            failures += seen.Failures;
            above += bounds.Lower > truth ? 1 : 0;
            below += bounds.Upper < truth ? 1 : 0;
        }

        ratios.Sort();
        return string.Create(
            CultureInfo.InvariantCulture,
            $"| {shape:0.0} | {parts} | {hours:0} h | {failures / ratios.Count:0.0} | {(double)ratios.Count / samples:0 %} | {ratios[ratios.Count / 2]:0.00} | {(double)above / ratios.Count:0.0 %} | {(double)below / ratios.Count:0.0 %} | {1 - (double)(above + below) / ratios.Count:0.0 %} |");
    }

    // One in six comes in used; a part that nobody looks at before the watch ends says nothing.
    private static ObservedLife? Part(Random random, double shape, double hours)
    {
        var entry = random.NextDouble() < 1 / 6.0 ? random.NextDouble() * 20 : 0;
        double life;
        do
        {
            life = Scale * Math.Pow(-Math.Log(1 - random.NextDouble()), 1 / shape);
        }
        while (life <= entry);

        var end = entry + 20 + random.NextDouble() * 100;
        var good = entry;
        for (var at = entry; ;)
        {
            at += hours * (0.6 + 0.8 * random.NextDouble());
            if (at > end)
            {
                return good > entry ? new ObservedLife(good, null, entry) : null;
            }

            if (at >= life)
            {
                return new ObservedLife(good, at, entry);
            }

            good = at;
        }
    }
}
