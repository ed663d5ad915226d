using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class GearingRankingTests
{
    private static readonly GearingStock s_stock = new(
        [null, new ToothPair(25, 28), new ToothPair(28, 25), new ToothPair(24, 29), new ToothPair(29, 24)],
        [FinalDrive.FromTeeth(new ToothPair(10, 36)), FinalDrive.FromTeeth(new ToothPair(10, 41)), FinalDrive.FromTeeth(new ToothPair(9, 40))]);

    private static readonly RankingQuestion s_question = new(TestCars.Car(), TestCars.Circuit, s_stock);

    private static readonly GearingRanking s_ranking = GearingRanking.Rank(s_question).Require();

    [Fact]
    public void Every_pair_with_every_final_drive_is_ranked_fastest_first()
    {
        Assert.Equal(15, s_ranking.Candidates.Count);
        Assert.Equal(15, s_ranking.Candidates.Select(c => (c.DropPair, c.FinalDrive)).Distinct().Count());
        Assert.Equal(s_ranking.Candidates.Select(c => c.StraightsTime.Seconds).Order(), s_ranking.Candidates.Select(c => c.StraightsTime.Seconds));
        Assert.Equal(0, s_ranking.Best.LossToBest.Seconds);
        Assert.Same(s_ranking.Candidates[1], s_ranking.RunnerUp);
    }

    [Fact]
    public void What_lies_on_the_shelf_twice_counts_once()
    {
        GearingStock twice = new([.. s_stock.DropPairs, new ToothPair(28, 25)], [.. s_stock.FinalDrives, s_stock.FinalDrives[0]]);
        Assert.Equal(15, GearingRanking.Rank(s_question with { Stock = twice, Changes = [] }).Require().Candidates.Count);
    }

    [Fact]
    public void The_figures_are_those_of_a_full_run_of_the_same_gearing()
    {
        GearingCandidate best = s_ranking.Best;
        VenueRun run = VenueRun.For(
            s_question.Car.With(s_question.Car.Drivetrain.With(best.DropPair, best.FinalDrive)), TestCars.Circuit);
        Assert.Equal(run.StraightsTime.Seconds, best.StraightsTime.Seconds, 5e-10);
        double most = run.Straights.Max(straight => straight.TopSpeed.MetersPerSecond);
        StraightRun top = run.Straights.First(straight => straight.TopSpeed.MetersPerSecond > most - 1e-5); // on the limiter: the first straight
        Assert.Equal(top.Straight.Name, best.TopSpeedStraight);
        Assert.Equal(top.TopSpeed.MetersPerSecond, best.TopSpeed.MetersPerSecond, 5e-10);
        Assert.Equal(run.Straights.Sum(straight => straight.Shifts.Count), best.ShiftsPerLap);
        Assert.Equal(run.Corners.Where(corner => corner.Falls).Select(corner => corner.Straight), best.CornersBetweenGears);
        Assert.Equal(run.Straights.Sum(straight => straight.OnLimiter.Seconds), best.OnLimiter.Seconds, 5e-10);
    }

    [Fact]
    public void No_gearing_beats_the_ideal_on_any_day()
    {
        Assert.All(s_ranking.Candidates, c => Assert.True(c.StraightsTime >= s_ranking.IdealTime));
        Assert.All(s_ranking.Changes, day => Assert.All(day.Candidates.Where(c => c.IsFinished), c => Assert.True(c.StraightsTime >= day.IdealTime)));
        Assert.True(s_ranking.Best.LossToIdeal.Seconds > 0);
    }

    [Fact]
    public void The_robust_pick_has_the_least_greatest_regret_by_hand()
    {
        double Regret(IReadOnlyList<GearingCandidate> day, GearingCandidate of) =>
            day.Single(c => c.DropPair == of.DropPair && c.FinalDrive == of.FinalDrive).LossToBest.Seconds;
        double Worst(GearingCandidate of) => s_ranking.Changes.Select(day => Regret(day.Candidates, of)).Append(of.LossToBest.Seconds).Max();
        Assert.Equal(s_ranking.Candidates.Min(Worst), Worst(s_ranking.Robust), 5e-13);
        Assert.Equal(Worst(s_ranking.Robust), s_ranking.WorstRegretOfRobust.Seconds, 5e-13);
    }

    [Fact]
    public void A_change_tells_whether_the_pick_changes_and_what_keeping_it_costs()
    {
        Assert.Equal(["tow", "head wind", "warm day", "worn tyres"], s_ranking.Changes.Select(day => day.Change.Name));
        Assert.All(s_ranking.Changes, day =>
        {
            Assert.Equal(day.PickChanges, day.Candidates[0].DropPair != s_ranking.Best.DropPair || day.Candidates[0].FinalDrive != s_ranking.Best.FinalDrive);
            Assert.Equal(day.PickChanges, day.LossOfPick!.Value.Seconds > 0);
        });
        Assert.True(s_ranking.Changes[0].IdealTime < s_ranking.IdealTime);
        Assert.True(s_ranking.Changes[1].IdealTime > s_ranking.IdealTime);
    }

    [Fact]
    public void An_empty_shelf_is_a_fault()
    {
        Outcome<GearingRanking> outcome = GearingRanking.Rank(s_question with { Stock = new GearingStock([], []) });
        Assert.Equal([GearingFaultKind.NoDropPair, GearingFaultKind.NoFinalDrive], outcome.Faults.Select(fault => fault.Kind));
    }

    [Fact]
    public void A_venue_that_not_even_the_ideal_can_drive_is_a_fault()
    {
        Venue wall = Venue.Create("wall", [TestCars.Straight("wall", 500, 5, 5, grade: 0.39)]).Require();
        RankingQuestion weak = s_question with { Venue = wall, Car = TestCars.Car(engine: TestCars.Curve((1000, 0.5), (1400, 1.2))) };
        Assert.Contains(GearingRanking.Rank(weak).Faults, fault => fault.Kind is GearingFaultKind.CannotPull or GearingFaultKind.NotFinished);
    }

    [Fact]
    public void A_changed_day_outside_what_can_be_worked_out_is_a_fault()
    {
        RankingQuestion hot = s_question with { Changes = [new ConditionChange("furnace", Warmer: TemperatureDelta.FromKelvins(90))] };
        Assert.Equal("temperature", GearingRanking.Rank(hot).Faults[0].Subject);
    }

    [Fact]
    public void Guards_caution_with_their_figures()
    {
        var guards = new GearingGuards(
            Propshaft: RotationalSpeed.FromRevolutionsPerMinute(6000), Engine: RotationalSpeed.FromRevolutionsPerMinute(8000));
        Car car = TestCars.Car(TestCars.Train(new ToothPair(28, 25), 3.6));
        IReadOnlyList<GearingCaution> cautions = guards.Check(car, Speed.FromKilometersPerHour(250), 5, onLimiter: true);
        Assert.Equal(
            [GearingCautionKind.TyreSpeed, GearingCautionKind.PropshaftSpeed, GearingCautionKind.EngineAtLimiter, GearingCautionKind.LimiterAboveEngineLimit],
            cautions.Select(caution => caution.Kind));
        Assert.Equal(Speed.FromKilometersPerHour(240), (Speed)cautions[0].Limit!);
        double engineRpm = car.EngineSpeedAt(5, Speed.FromKilometersPerHour(250)).RevolutionsPerMinute;
        Assert.Equal(engineRpm / car.Drivetrain.RatioToPropshaft(5), ((RotationalSpeed)cautions[1].Figure!).RevolutionsPerMinute, 5e-7);
    }

    [Theory]
    [InlineData("205/50ZR15", GearingCautionKind.TyreSpeedOpenEnded)]
    [InlineData("205/50R15", GearingCautionKind.TyreSpeedNotKnown)]
    public void A_tyre_with_an_open_or_no_symbol_is_cautioned_as_such(string code, GearingCautionKind expected)
    {
        Car car = TestCars.Car(tyre: RollingTyre.FromSize(TyreSize.Parse(code).Require()).Require());
        Assert.Equal(expected, Assert.Single(new GearingGuards().Check(car, Speed.FromKilometersPerHour(250), 5, false)).Kind);
    }
}
