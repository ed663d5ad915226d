using BenchmarkDotNet.Attributes;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Benchmarks;

/// <summary>Searches 10.6 million combinations: seven pairs in each of six gears, 18 drop pairs, five final drives, on a lap of six straights.</summary>
public class ShelfSearchBenchmark
{
    private RankingQuestion _question = null!;

    /// <summary>Number of combinations.</summary>
    internal static long Combinations { get; } = Question() is var question
        ? question.GearPairs.Aggregate((long)question.Stock.DropPairs.Count * question.Stock.FinalDrives.Count, (all, pairs) => all * pairs.Count)
        : 0;

    [GlobalSetup]
    public void Setup() => _question = Question();

    [Benchmark]
    public int Search() => ShelfSearch.Fastest(_question).Count;

    /// <summary>Times one search, with the number of combinations and what was found.</summary>
    internal static void Run()
    {
        RankingQuestion question = Question();
        for (int i = 0; i < 3; i++)
        {
            TimeSpan before = Environment.CpuUsage.TotalTime;
            long start = System.Diagnostics.Stopwatch.GetTimestamp();
            IReadOnlyList<GearSet> found = ShelfSearch.Fastest(question);
            Console.WriteLine($"{Combinations} combinations, {System.Diagnostics.Stopwatch.GetElapsedTime(start).TotalSeconds:0.00} s, processor {(Environment.CpuUsage.TotalTime - before).TotalSeconds:0.00} s, {found.Count} sets:");
            foreach (GearSet set in found)
            {
                Console.WriteLine($"  {set.DropPair} with {set.FinalDrive}: {set.Gears}");
            }
        }
    }

    private static RankingQuestion Question()
    {
        RankingQuestion lap = GearingRankingBenchmark.Question();
        (int Driver, int Driven)[] fitted = [(17, 43), (21, 39), (25, 36), (28, 33), (30, 30), (32, 28)];
        IReadOnlyList<ToothPair>[] pairs =
        [
            .. fitted.Select(gear => (IReadOnlyList<ToothPair>)[.. Enumerable.Range(-3, 7).Select(more => new ToothPair(gear.Driver - (more / 2), gear.Driven + more - (more / 2)))]),
        ];
        ToothPair[] drops = [.. Enumerable.Range(0, 9).Select(more => new ToothPair(29 - (more / 2), 30 + ((more + 1) / 2))).SelectMany(pair => new[] { pair, pair.Swapped })];
        Drivetrain train = Drivetrain.Create([.. fitted.Select((gear, i) => Gear.FromTeeth($"{i + 1}", new ToothPair(gear.Driver, gear.Driven)))], drops[2], lap.Stock.FinalDrives[2]).Require();
        return lap with
        {
            Car = lap.Car.With(train),
            Venue = Venue.Create("Six straights", [.. lap.Venue.Straights.Take(6)]).Require(),
            Stock = new GearingStock([.. drops], lap.Stock.FinalDrives),
            GearPairs = pairs,
            Fitted = new GearSet(drops[2], lap.Stock.FinalDrives[2]),
            Guards = new GearingGuards(RotationalSpeed.FromRevolutionsPerMinute(8600)),
        };
    }
}
