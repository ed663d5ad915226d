using System.Collections.Concurrent;
using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Runs sets again with each input off by its standard uncertainty, so that what two sets share falls out of their difference.</summary>
/// <remarks>
/// JCGM 100:2008, 5.1.2 and 5.1.3 note 2, on the difference of paired runs, inputs taken as independent. Where both sides of an
/// input are run the larger change counts: shifts and corner gears make kinks, over which the mean of both could come out as none.
/// Threads share it.
/// </remarks>
internal sealed class UncertaintyRuns
{
    private readonly Lazy<(InputRange Range, CandidateRunner Runner)[]> _days;
    private readonly CandidateRunner _planned;
    private readonly ConcurrentDictionary<GearSet, double[]?[]> _seconds = new();

    // A day outside what can be worked out is left to the input's other side.
    internal UncertaintyRuns(Car car, Venue venue, IReadOnlyList<InputRange> ranges)
    {
        _planned = new CandidateRunner(car, venue, new GearingGuards());
        _days = new(() => [.. ranges.SelectMany(range => range.Days.Select(day => (range, RunnerOf(day, car, venue)))).Where(day => day.Item2 is not null).Select(day => (day.range, day.Item2!))]);
    }

    /// <summary>The difference on the planned day with its uncertainty; null if one of the sets does not finish with every input.</summary>
    internal TimeDifference? Difference(GearSet one, GearSet other)
    {
        if (one == other)
        {
            return new TimeDifference(Duration.Zero, Duration.Zero);
        }

        double[]?[] first = _seconds.GetOrAdd(one, Run), second = _seconds.GetOrAdd(other, Run);
        if (first.Contains(null) || second.Contains(null))
        {
            return null;
        }

        double model = InputRange.Standard(InputRange.Model.Seconds);
        double variance = model * model;
        foreach (IGrouping<InputRange, int> input in Enumerable.Range(0, _days.Value.Length).GroupBy(day => _days.Value[day].Range))
        {
            double largest = 0;
            foreach (int day in input)
            {
                double[] moved = Moved(first, second, day + 1);
                double together = Math.Pow(moved.Sum(), 2);
                largest = Math.Max(largest, input.Key.EachStraight ? Math.Max(together, moved.Sum(straight => straight * straight)) : together);
            }

            variance += largest;
        }

        return new TimeDifference(Duration.FromSeconds(first[0]!.Sum() - second[0]!.Sum()), Duration.FromSeconds(2 * Math.Sqrt(variance)));
    }

    private static CandidateRunner? RunnerOf(ConditionChange change, Car car, Venue venue) =>
        change.Apply(car).TryGet(out Car? changed) && change.Apply(venue).TryGet(out Venue? course) ? new CandidateRunner(changed, course, new GearingGuards()) : null;

    // By how much a day moves the difference of two sets, on each straight.
    private static double[] Moved(double[]?[] first, double[]?[] second, int day) =>
        [.. first[day]!.Select((seconds, i) => seconds - second[day]![i] - (first[0]![i] - second[0]![i]))];

    private double[]?[] Run(GearSet set) => [_planned.SecondsOf(set), .. _days.Value.Select(day => day.Runner.SecondsOf(set))];
}
