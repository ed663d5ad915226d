using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class DogWorkTests
{
    private static readonly DogRing[] s_rings = [new("1-2", [1, 2]), new("3-4", [3, 4]), new("5", [5])];
    private static readonly ShiftStyle s_style = new(RotationalSpeed.FromRevolutionsPerMinute(150));
    private static readonly Car s_car = TestCars.Car(TestCars.Train(new ToothPair(25, 28), 4.1));
    private static readonly VenueRun s_run = VenueRun.For(s_car, TestCars.Circuit);

    private static readonly DogInertias s_inertias = new(
        MassMomentOfInertia.FromKilogramSquareMeters(0.09), MassMomentOfInertia.FromKilogramSquareMeters(0.5));

    [Fact]
    public void An_engagement_loses_half_the_reduced_inertia_times_the_speed_difference_squared()
    {
        DogWork work = DogWork.For(s_car, s_run, s_rings, s_style, 1, s_inertias).Require();
        DogEngagement up = work.Engagements.First(engagement => engagement.IsUpshift);
        double ratio = s_car.Drivetrain.RatioToMainshaft(up.To);
        double input = 0.09 * ratio * ratio;
        double reduced = input * 0.5 / (input + 0.5);
        double difference = up.SpeedDifference.RadiansPerSecond;
        Assert.Equal(0.5 * reduced * difference * difference, up.Energy!.Value.Joules, 5e-7);
        Assert.Equal(150 / ratio, up.MatchedDifference.RevolutionsPerMinute, 5e-7);
    }

    [Fact]
    public void The_loss_is_what_two_free_discs_lose_when_they_come_to_one_speed()
    {
        // Angular momentum kept, kinetic energy before less after: mechanics from scratch.
        DogWork work = DogWork.For(s_car, s_run, s_rings, s_style, 1, s_inertias).Require();
        Assert.All(work.Engagements, engagement =>
        {
            double ratio = s_car.Drivetrain.RatioToMainshaft(engagement.To);
            double j1 = 0.09 * ratio * ratio, j2 = 0.5, w2 = 300, w1 = w2 + engagement.SpeedDifference.RadiansPerSecond;
            double common = ((j1 * w1) + (j2 * w2)) / (j1 + j2);
            double lost = (0.5 * j1 * w1 * w1) + (0.5 * j2 * w2 * w2) - (0.5 * (j1 + j2) * common * common);
            Assert.Equal(1, lost / engagement.Energy!.Value.Joules, 5e-7);
        });
    }

    [Fact]
    public void Going_up_the_gear_is_too_fast_and_coming_down_too_slow()
    {
        DogWork work = DogWork.For(s_car, s_run, s_rings, s_style).Require();
        Assert.All(work.Engagements, engagement =>
            Assert.Equal(engagement.IsUpshift ? 1 : -1, Math.Sign(engagement.SpeedDifference.RadiansPerSecond)));
        Assert.Contains(work.Engagements, engagement => engagement.IsUpshift);
        Assert.Contains(work.Engagements, engagement => !engagement.IsUpshift);
    }

    [Fact]
    public void Without_inertias_there_are_shares_and_no_joules()
    {
        DogWork work = DogWork.For(s_car, s_run, s_rings, s_style, 20).Require();
        Assert.False(work.IsAbsolute);
        Assert.All(work.Rings, ring => Assert.IsNotType<RingEnergy>(ring));
        Assert.All(work.Engagements, engagement => Assert.Null(engagement.Energy));
        Assert.Equal(1, work.Rings.Sum(ring => ring.Share), 5e-10);
        Assert.Equal(1, work.Engagements.Max(engagement => engagement.Relative), 5e-13);
    }

    [Fact]
    public void An_event_is_its_laps_and_rings_add_up_to_the_engagements()
    {
        DogWork work = DogWork.For(s_car, s_run, s_rings, s_style, 20, s_inertias).Require();
        RingEnergy[] rings = work.Rings.Cast<RingEnergy>().ToArray();
        Assert.All(rings, ring => Assert.Equal(20 * ring.PerLap.Joules, ring.PerEvent.Joules, 6));
        Assert.Equal(work.Engagements.Sum(e => e.Energy!.Value.Joules), rings.Sum(ring => ring.PerLap.Joules), 5e-7);
        Assert.Equal(work.Engagements.Count, rings.Sum(ring => ring.UpshiftsPerLap + ring.DownshiftsPerLap));
        Assert.All(rings, ring => Assert.True(ring.MatchedPerLap <= ring.PerLap));
    }

    [Fact]
    public void Every_upshift_of_the_run_is_an_engagement()
    {
        DogWork work = DogWork.For(s_car, s_run, s_rings, s_style).Require();
        Assert.Equal(
            s_run.Straights.Sum(straight => straight.Shifts.Count(shift => shift.To > shift.From)),
            work.Engagements.Count(engagement => engagement.IsUpshift));
    }

    [Fact]
    public void Rings_that_do_not_fit_the_gears_are_faults()
    {
        Outcome<DogWork> outcome = DogWork.For(s_car, s_run, [new("1-2", [1, 2]), new("2-3", [2, 3, 9])], s_style);
        Assert.All(outcome.Faults, fault => Assert.Equal(GearingFaultKind.RingsDoNotFit, fault.Kind));
        Assert.Equal(4, outcome.Faults.Count); // gear 2 twice, gear 9, gears 4 and 5 without a ring
        Assert.Equal("laps", DogWork.For(s_car, s_run, s_rings, s_style, 0).Faults[0].Subject);
    }
}
