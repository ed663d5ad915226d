using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Every drop pair × final drive in stock over a whole venue, best first. Immutable.</summary>
public sealed class GearingRanking
{
    private const double ReachShare = 0.01;

    private readonly UncertaintyRuns _runs;
    private readonly RankingQuestion _question;

    private GearingRanking(
        RankingQuestion question,
        IReadOnlyList<GearingCandidate> candidates,
        Duration idealTime,
        IReadOnlyList<RankingUnderChange> changes,
        IReadOnlyList<ConditionChange> changesLeftOut,
        UncertaintyRuns runs)
    {
        _question = question;
        Candidates = candidates;
        IdealTime = idealTime;
        Changes = changes;
        ChangesLeftOut = changesLeftOut;
        _runs = runs;
    }

    /// <summary>All candidates: those that may be used, fastest first; then those past a limit; last those that do not finish.</summary>
    public IReadOnlyList<GearingCandidate> Candidates { get; }

    /// <summary>The fastest stocked set that may be used; null if every one passes a limit or does not finish.</summary>
    public GearingCandidate? Best => Candidates.FirstOrDefault(candidate => candidate.IsUsable && candidate.IsStocked);

    /// <summary>
    /// What is slower than the fastest by more than this is not run on the changed days: 1 % of the time on the straights, several times
    /// what a change moves two sets against each other (Layshaft's own convention).
    /// </summary>
    public Duration Reach => (Best?.StraightsTime ?? Duration.Zero) * ReachShare;

    /// <summary>Time on the straights of the ideal: the same engine with an infinitely variable transmission.</summary>
    public Duration IdealTime { get; }

    /// <summary>The ranking of the sets within <see cref="Reach"/> on each changed day, in the order asked for.</summary>
    public IReadOnlyList<RankingUnderChange> Changes { get; }

    /// <summary>The changed days that are outside what can be worked out, such as corners too fast to brake for.</summary>
    public IReadOnlyList<ConditionChange> ChangesLeftOut { get; }

    /// <summary>A ranked set; null if it was not ranked.</summary>
    /// <param name="set">The set.</param>
    public GearingCandidate? Find(GearSet set) => Candidates.FirstOrDefault(candidate => candidate.Set == set);

    /// <summary>The gears in the box, numbered from 1, whose pair a change between two sets replaces.</summary>
    /// <param name="from">What is fitted.</param>
    /// <param name="to">What is to be fitted.</param>
    public IReadOnlyList<int> GearsThatDiffer(GearSet from, GearSet to) => _question.Car.Drivetrain.GearsThatDiffer(from, to);

    /// <summary>Working time of a change between two sets, by <see cref="RankingQuestion.Work"/>.</summary>
    /// <param name="from">What is fitted.</param>
    /// <param name="to">What is to be fitted.</param>
    public Duration Work(GearSet from, GearSet to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        return _question.Work.Of(from.DropPair != to.DropPair, from.FinalDrive != to.FinalDrive, GearsThatDiffer(from, to).Count);
    }

    /// <summary>How many gears of a set the owner would have to buy or borrow.</summary>
    /// <param name="set">The set.</param>
    public int Bought(GearSet set) => _question.Bought(set);

    /// <summary>Time a lap of one set less that of another, with its uncertainty; null if one of them does not finish.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    public TimeDifference? Difference(GearingCandidate one, GearingCandidate other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return one.IsFinished && other.IsFinished ? _runs.Difference(one.Set, other.Set) : null;
    }

    /// <summary>Ranks.</summary>
    /// <param name="question">The car, the venue, the stock, the changes, the limits.</param>
    /// <returns>
    /// The ranking, or faults: nothing in stock, or a straight that not even the ideal, nor any candidate, comes to the end of.
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

        if (!faults.IsEmpty)
        {
            return faults.Finish<GearingRanking>(() => null!);
        }

        GearPairs? gears = question.Fitted?.Gears;
        GearSet[] stocked =
        [
            .. stock.DropPairs.Distinct().SelectMany(pair => stock.FinalDrives.Distinct().Select(final => new GearSet(pair, final, gears)))
                .Concat(question.GearPairs.Count > 0 ? ShelfSearch.Fastest(question) : []).Distinct(),
        ];
        GearSet[] sets = [.. stocked, .. question.Others.Prepend(question.Fitted).OfType<GearSet>().Where(other => !stocked.Contains(other)).Distinct()];
        var runner = new CandidateRunner(question.Car, question.Venue, question.Guards) { IdealAmong = sets };
        (Duration idealTime, GearingFault? stuck) = runner.Ideal;
        GearingCandidate[] planned = Array.ConvertAll(sets, set => runner.Run(set) with { IsStocked = stocked.Contains(set) });
        if (stuck is not null)
        {
            faults.Add(stuck);
        }
        else if (!planned.Any(candidate => candidate.IsFinished))
        {
            faults.AddRange(planned[0].Faults);
        }

        return faults.Finish(() => Compose(question, planned, idealTime));
    }

    private static GearingRanking Compose(RankingQuestion question, GearingCandidate[] planned, Duration idealTime)
    {
        var days = new List<(ConditionChange Change, CandidateRunner Runner)>();
        var leftOut = new List<ConditionChange>();
        foreach (ConditionChange change in question.Changes)
        {
            if (change.Apply(question.Car).TryGet(out Car? car) && change.Apply(question.Venue).TryGet(out Venue? venue))
            {
                days.Add((change, new CandidateRunner(car, venue, question.Guards)));
            }
            else
            {
                leftOut.Add(change);
            }
        }

        GearingCandidate[] own = Array.ConvertAll(planned, candidate => candidate with { PassedLimits = Passed(candidate, null).ToArray() });
        double fastestS = FastestS(own);
        Field field = FieldWithin(fastestS);

        // A changed day may forbid the fastest: what is near the next one is run on the changed days too, until the fastest may be used.
        // So whatever is within Reach of the best, and what is fitted, has been held against the limits of every day.
        for (double nextS = FastestS(field.Planned); nextS > fastestS; nextS = FastestS(field.Planned))
        {
            fastestS = nextS;
            field = FieldWithin(fastestS);
        }

        Field FieldWithin(double fromS) => FieldOf(
            own,
            candidate => candidate.IsFinished && (!candidate.IsStocked || candidate.Set == question.Fitted || question.Others.Contains(candidate.Set) || candidate.StraightsTime.Seconds <= fromS * (1 + ReachShare)),
            days);
        return new GearingRanking(
            question,
            InOrder(field.Planned),
            idealTime,
            [.. days.Select((day, i) => new RankingUnderChange(day.Change, InOrder(field.Days[i])))],
            leftOut,
            new UncertaintyRuns(question.Car, question.Venue, question.Ranges ?? InputRange.Usual(question.Car.Tyre.Basis)));
    }

    private static double FastestS(GearingCandidate[] candidates) =>
        candidates.Where(candidate => candidate.IsUsable && candidate.IsStocked).Select(candidate => candidate.StraightsTime.Seconds).DefaultIfEmpty(0).Min();

    // Runs the chosen candidates on the changed days, and notes each limit once: as passed on the planned day, else on the first that passes it.
    private static Field FieldOf(GearingCandidate[] own, Func<GearingCandidate, bool> isRun, List<(ConditionChange Change, CandidateRunner Runner)> days)
    {
        var planned = (GearingCandidate[])own.Clone();
        List<GearingCandidate>[] changed = [.. days.Select(_ => new List<GearingCandidate>())];
        for (int i = 0; i < own.Length; i++)
        {
            if (!isRun(own[i]))
            {
                continue;
            }

            GearingCandidate[] runs = [.. days.Select(day => day.Runner.Run(own[i].Set) with { IsStocked = own[i].IsStocked })];
            PassedLimit[] passed = [.. own[i].PassedLimits.Concat(runs.SelectMany((run, day) => Passed(run, days[day].Change))).DistinctBy(limit => limit.Caution.Kind)];
            planned[i] = own[i] with { PassedLimits = passed };
            for (int day = 0; day < runs.Length; day++)
            {
                changed[day].Add(runs[day] with { PassedLimits = passed });
            }
        }

        return new Field(planned, changed);
    }

    private static IEnumerable<PassedLimit> Passed(GearingCandidate run, ConditionChange? change) =>
        run.Cautions.Where(caution => caution.IsLimit).Select(caution => new PassedLimit(caution, change));

    private static GearingCandidate[] InOrder(IReadOnlyList<GearingCandidate> candidates)
    {
        GearingCandidate[] ranked = [.. candidates.OrderBy(candidate => candidate.IsUsable ? 0 : candidate.IsFinished ? 1 : 2).ThenBy(candidate => candidate.StraightsTime.Seconds)];
        GearingCandidate? best = ranked.FirstOrDefault(candidate => candidate.IsStocked && candidate.IsFinished);
        return Array.ConvertAll(ranked, candidate => candidate.IsFinished && best is not null
            ? candidate with { LossToBest = candidate.StraightsTime - best.StraightsTime }
            : candidate);
    }

    private sealed record Field(GearingCandidate[] Planned, List<GearingCandidate>[] Days);
}
