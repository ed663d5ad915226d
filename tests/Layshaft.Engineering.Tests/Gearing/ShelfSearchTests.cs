using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class ShelfSearchTests
{
    private static readonly ToothPair[][] s_fitted = [[new(17, 43)], [new(21, 39)], [new(25, 36)], [new(28, 33)], [new(30, 30)]];

    // Tooth counts about the fitted ones, two to four pairs a gear; drop pairs and final drives few, so that all can be run one by one.
    private static readonly Gen<RankingQuestion> s_questions =
        from more in Gen.Select(Gen.Int[-2, 2], Gen.Int[-3, 3], (driver, driven) => (driver, driven)).Array[0, 3].Array[5]
        from pairs in Gen.Int[-3, 3].Array[1, 2]
        from finals in Gen.Int[34, 46].Array[1, 2]
        from straights in Gen.Select(Gen.Int[120, 900], Gen.Double[0, 45].Select(mps => mps < 5 ? 0 : mps), Gen.Double[15, 40], Gen.Double[-0.05, 0.12], Gen.Double[0.75, 1]).Array[2, 4]
        from limit in Gen.Double[6500, 9500]
        from change in Gen.Int[0, 4]
        from work in Gen.Double[0.1, 5].Array[4]
        select Question(more, pairs, finals, straights, limit, ConditionChange.Usual[change], work);

    [Fact]
    public void It_finds_what_running_every_combination_finds() => s_questions.Sample(
        question =>
        {
            GearSet[] found = [.. ShelfSearch.Fastest(question)], expected = [.. ByRunningAll(question)];
            Assert.Equal(expected.Length, found.Length);
            var runner = new CandidateRunner(question.Car, question.Venue, question.Guards);
            for (int i = 0; i < found.Length; i++)
            {
                Assert.Equal(runner.Run(expected[i]).StraightsTime.Seconds, runner.Run(found[i]).StraightsTime.Seconds, 1e-7);
                Assert.Equal(Work(question, expected[i]), Work(question, found[i]), 1e-9);
            }
        },
        iter: 30);

    private static IEnumerable<GearSet> ByRunningAll(RankingQuestion question)
    {
        var runner = new CandidateRunner(question.Car, question.Venue, question.Guards);
        CandidateRunner[] days =
        [
            .. question.Changes.Select(change => new CandidateRunner(change.Apply(question.Car).Require(), change.Apply(question.Venue).Require(), question.Guards)),
        ];
        double fastest = double.PositiveInfinity;
        return Sets(question).Select(set => (Set: set, Run: runner.Run(set)))
            .Where(set => set.Run.IsFinished && !days.Select(day => day.Run(set.Set)).Append(set.Run).Any(run => run.Cautions.Any(caution => caution.IsLimit)))
            .OrderBy(set => Work(question, set.Set)).ThenBy(set => set.Run.StraightsTime.Seconds)
            .Where(set =>
            {
                bool isFaster = set.Run.StraightsTime.Seconds < fastest - ShelfSearch.FasterS;
                fastest = Math.Min(fastest, set.Run.StraightsTime.Seconds);
                return isFaster;
            })
            .Select(set => set.Set);
    }

    private static IEnumerable<GearSet> Sets(RankingQuestion question)
    {
        IEnumerable<IEnumerable<ToothPair>> rows = question.GearPairs.Aggregate(
            (IEnumerable<IEnumerable<ToothPair>>)[[]], (all, position) => all.SelectMany(row => position.Distinct().Select(pair => row.Append(pair))));
        foreach (ToothPair[] row in rows.Select(row => row.ToArray()))
        {
            double[] steps = [.. Enumerable.Range(1, row.Length - 1).Select(i => row[i - 1].Ratio / row[i].Ratio)];
            if (steps.All(step => step > 1) && Enumerable.Range(1, steps.Length - 1).All(i => steps[i] <= steps[i - 1] * 1.02))
            {
                foreach (ToothPair? pair in question.Stock.DropPairs.Distinct())
                {
                    foreach (FinalDrive final in question.Stock.FinalDrives.Distinct())
                    {
                        yield return new GearSet(pair, final, new GearPairs(row));
                    }
                }
            }
        }
    }

    private static double Work(RankingQuestion question, GearSet set)
    {
        GearSet fitted = question.Fitted!;
        return question.Work.Of(set.DropPair != fitted.DropPair, set.FinalDrive != fitted.FinalDrive, question.Car.Drivetrain.GearsThatDiffer(fitted, set).Count).Hours;
    }

    private static RankingQuestion Question(
        (int Driver, int Driven)[][] more, int[] pairs, int[] finals, (int Length, double Start, double End, double Grade, double Least)[] straights, double limit, ConditionChange change, double[] work)
    {
        ToothPair[] drops = [.. pairs.Select(teeth => new ToothPair(25 - teeth, 25 + teeth))];
        FinalDrive[] axles = [.. finals.Select(crown => FinalDrive.FromTeeth(new ToothPair(10, crown)))];
        Drivetrain train = Drivetrain.Create([.. s_fitted.Select((pair, i) => Gear.FromTeeth($"{i + 1}", pair[0]))], drops[0], axles[0]).Require();
        return new RankingQuestion(
            TestCars.Car(train, TestCars.Spec with { MeshEfficiency = 0.988, AxleEfficiency = 0.96 }),
            Venue.Create("venue", [.. straights.Select((s, i) => TestCars.Straight($"{i}", s.Length + (int)(s.Start * s.Start / 22), s.Start, s.End, s.Grade, s.Start * s.Least))]).Require(),
            new GearingStock([.. drops], axles))
        {
            Fitted = new GearSet(drops[0], axles[0]),
            GearPairs = [.. s_fitted.Select((pair, i) => (IReadOnlyList<ToothPair>)[pair[0], .. more[i].Select(by => new ToothPair(pair[0].Driver + by.Driver, pair[0].Driven + by.Driven))])],
            Guards = new GearingGuards(RotationalSpeed.FromRevolutionsPerMinute(limit)),
            Changes = [change],
            Work = new ChangeWork(Duration.FromHours(work[0]), Duration.FromHours(work[1]), Duration.FromHours(work[2]), Duration.FromHours(work[3])),
        };
    }
}
