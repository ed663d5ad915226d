using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Every drop pair × final drive in stock over a whole venue, best first. Immutable.</summary>
public sealed class GearingRanking
{
    private GearingRanking(
        IReadOnlyList<GearingCandidate> candidates,
        Duration idealTime,
        IReadOnlyList<RankingUnderChange> changes,
        GearingCandidate robust,
        Duration worstRegret)
    {
        Candidates = candidates;
        IdealTime = idealTime;
        Changes = changes;
        Robust = robust;
        WorstRegretOfRobust = worstRegret;
    }

    /// <summary>All candidates, the fastest first; those that do not finish last.</summary>
    public IReadOnlyList<GearingCandidate> Candidates { get; }

    /// <summary>The fastest candidate on the planned day.</summary>
    public GearingCandidate Best => Candidates[0];

    /// <summary>The second; null when there is one candidate only.</summary>
    public GearingCandidate? RunnerUp => Candidates.Count > 1 ? Candidates[1] : null;

    /// <summary>Time on the straights of the ideal: the same engine with an infinitely variable transmission.</summary>
    public Duration IdealTime { get; }

    /// <summary>The ranking again on each changed day, in the order asked for.</summary>
    public IReadOnlyList<RankingUnderChange> Changes { get; }

    /// <summary>
    /// The candidate that loses least in the worst of the planned day and the changed ones (least greatest regret: Savage,
    /// J. Am. Stat. Assoc. 46 (1951) 55, from memory).
    /// </summary>
    public GearingCandidate Robust { get; }

    /// <summary>What <see cref="Robust"/> loses a lap on its worst day against the best of that day.</summary>
    public Duration WorstRegretOfRobust { get; }

    /// <summary>Ranks.</summary>
    /// <param name="question">The car, the venue, the stock, the changes, the limits.</param>
    /// <returns>
    /// The ranking, or faults: nothing in stock, a changed day outside what can be worked out, or a straight that not even the
    /// ideal, nor any candidate, comes to the end of.
    /// </returns>
    public static Outcome<GearingRanking> Rank(RankingQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var faults = new FaultList();
        GearingStock stock = question.Stock;
        if (stock.DropPairs.Count == 0)
        {
            faults.Add(new GearingFault(GearingFaultKind.NoDropPair, "drop_pairs"));
        }

        if (stock.FinalDrives.Count == 0)
        {
            faults.Add(new GearingFault(GearingFaultKind.NoFinalDrive, "final_drives"));
        }

        Outcome<Car>[] changed = question.Changes.Select(change => change.Apply(question.Car)).ToArray();
        faults.AddRange(changed.SelectMany(outcome => outcome.Faults));
        if (!faults.IsEmpty)
        {
            return faults.Finish<GearingRanking>(() => null!);
        }

        Day planned = DayOf(question, question.Car);
        if (planned.IdealFault is { } stuck)
        {
            faults.Add(stuck);
        }
        else if (!planned.InOrder.Any(candidate => candidate.IsFinished))
        {
            faults.AddRange(planned.InOrder[0].Faults);
        }

        return faults.Finish(() => Compose(question, planned, Array.ConvertAll(changed, car => DayOf(question, car.Value!))));
    }

    private static GearingRanking Compose(RankingQuestion question, Day planned, Day[] changedDays)
    {
        int best = planned.Order[0];
        var changes = new List<RankingUnderChange>();
        for (int i = 0; i < changedDays.Length; i++)
        {
            Day day = changedDays[i];
            double regret = day.RegretS(best);
            changes.Add(new RankingUnderChange(
                question.Changes[i],
                day.Ranked,
                day.IdealTime,
                day.Order[0] != best,
                double.IsFinite(regret) ? Duration.FromSeconds(regret) : null));
        }

        // Behind all that finish on every day, a candidate that does not; among equals the faster on the planned day.
        Day[] days = [planned, .. changedDays];
        int robust = planned.Order.MinBy(candidate => days.Max(day => day.RegretS(candidate)));
        double worst = days.Max(day => day.RegretS(robust));
        if (!double.IsFinite(worst))
        {
            (robust, worst) = (best, days.Select(day => day.RegretS(best)).Where(double.IsFinite).Max());
        }

        int place = Array.IndexOf(planned.Order, robust);
        return new GearingRanking(planned.Ranked, planned.IdealTime, changes, planned.Ranked[place], Duration.FromSeconds(worst));
    }

    private static Day DayOf(RankingQuestion question, Car car)
    {
        var runner = new CandidateRunner(car, question.Venue, question.Stock, question.Guards);
        var candidates = new List<GearingCandidate>();
        foreach (ToothPair? pair in question.Stock.DropPairs.Distinct())
        {
            foreach (FinalDrive final in question.Stock.FinalDrives.Distinct())
            {
                candidates.Add(runner.Run(pair, final));
            }
        }

        return new Day(candidates.ToArray(), runner.IdealTime, runner.IdealFault);
    }

    /// <summary>All candidates on one day, in stock order and ranked.</summary>
    private sealed class Day
    {
        internal Day(GearingCandidate[] inOrder, Duration idealTime, GearingFault? idealFault)
        {
            InOrder = inOrder;
            IdealTime = idealTime;
            IdealFault = idealFault;
            Order = Enumerable.Range(0, inOrder.Length)
                .OrderBy(i => inOrder[i].IsFinished ? 0 : 1)
                .ThenBy(i => inOrder[i].StraightsTime.Seconds)
                .ToArray();
            double bestS = inOrder[Order[0]].StraightsTime.Seconds;
            Ranked = Array.ConvertAll(Order, i => inOrder[i] with
            {
                LossToBest = Duration.FromSeconds(inOrder[i].IsFinished ? inOrder[i].StraightsTime.Seconds - bestS : 0),
            });
        }

        internal GearingCandidate[] InOrder { get; }

        internal int[] Order { get; }

        internal GearingCandidate[] Ranked { get; }

        internal Duration IdealTime { get; }

        internal GearingFault? IdealFault { get; }

        /// <summary>Seconds lost against the day's best; infinite when the candidate does not finish.</summary>
        internal double RegretS(int candidate) => InOrder[candidate].IsFinished
            ? InOrder[candidate].StraightsTime.Seconds - InOrder[Order[0]].StraightsTime.Seconds
            : double.PositiveInfinity;
    }
}
