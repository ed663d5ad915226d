using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class UpshiftPlanTests
{
    private static Upshift Plan(EngineCurve engine, double step) => Assert.Single(UpshiftPlan.For(
        Drivetrain.Create(TestCars.Gears(step, 1), null, FinalDrive.FromRatio(4).Require()).Require(), engine));

    [Fact]
    public void The_shift_is_where_the_next_gears_wheel_force_overtakes()
    {
        // Straight-line torque 300 − rpm/40: T(n)·1.25 = T(n/1.25) at n = (1.25 − 1)·300·40/(1.25 − 1/1.25).
        Upshift shift = Plan(TestCars.Curve((1000, 275), (11000, 25)), 1.25);
        Assert.Equal(UpshiftReason.ForcesCross, shift.Reason);
        Assert.Equal(0.25 * 300 * 40 / 0.45, shift.At.RevolutionsPerMinute, 5e-4);
        Assert.Equal(shift.At.RevolutionsPerMinute / 1.25, shift.Lands.RevolutionsPerMinute, 5e-10);
        Assert.Single(shift.Crossings);
    }

    [Fact]
    public void Forces_that_never_cross_mean_the_limiter()
    {
        Upshift shift = Plan(TestCars.Curve((2000, 200), (7000, 200)), 1.3);
        Assert.Equal(UpshiftReason.Limiter, shift.Reason);
        Assert.Equal(7000, shift.At.RevolutionsPerMinute, 5e-10);
        Assert.Empty(shift.Crossings);
    }

    [Fact]
    public void A_step_that_lands_below_the_table_means_the_limiter() =>
        Assert.Equal(UpshiftReason.Limiter, Plan(TestCars.Curve((5000, 200), (6000, 100)), 1.5).Reason);

    [Fact]
    public void A_next_gear_that_always_pulls_harder_means_at_once()
    {
        // Torque falling faster than 1/rpm² everywhere.
        Upshift shift = Plan(TestCars.Curve([.. Enumerable.Range(0, 41).Select(i => (2000 + (i * 100.0), 4e9 / Math.Pow(2000 + (i * 100.0), 2.5)))]), 1.2);
        Assert.Equal(UpshiftReason.AtOnce, shift.Reason);
        Assert.Equal(2400, shift.At.RevolutionsPerMinute, 5e-7);
    }

    [Theory]
    [InlineData(140, UpshiftReason.Limiter)] // a second hump high enough to be worth waiting for
    [InlineData(60, UpshiftReason.ForcesCross)] // one too low: the shift before the dip is right
    public void Where_the_forces_cross_twice_the_shift_that_loses_least_time_is_taken(double humpNm, UpshiftReason expected)
    {
        EngineCurve engine = TestCars.Curve(
            (2000, 120), (3000, 160), (3600, 150), (4200, 90), (4800, humpNm), (6500, humpNm), (7000, humpNm * 0.97));
        Upshift shift = Plan(engine, 1.35);
        Assert.Equal(expected, shift.Reason);
        Assert.NotEmpty(shift.Crossings);

        // No other shift reaches the limiter's road speed sooner, by brute force over ∫dv/F.
        double best = Enumerable.Range(0, 431).Select(i => 2700 + (i * 10.0)).Min(rpm => TimeWith(engine, 1.35, rpm));
        Assert.InRange(TimeWith(engine, 1.35, shift.At.RevolutionsPerMinute), 0, best * (1 + 1e-4));
    }

    [Fact]
    public void Scaling_the_curve_moves_no_shift() => Gen.Select(Gen.Double[0.5, 2], Gen.Double[1.1, 1.6]).Sample((factor, step) =>
    {
        EngineCurve scaled = TestCars.Curve([.. TestCars.RaceEngine.Points.Select(p => (p.EngineSpeed.RevolutionsPerMinute, factor * p.Torque.NewtonMeters))]);
        Assert.Equal(Plan(TestCars.RaceEngine, step).At.RevolutionsPerMinute, Plan(scaled, step).At.RevolutionsPerMinute, tolerance: 1e-3);
    });

    private static double TimeWith(EngineCurve engine, double step, double shiftRpm)
    {
        const int Steps = 6000;
        double low = 2700, limiter = engine.Limiter.RevolutionsPerMinute, width = (limiter - low) / Steps;
        double time = 0;
        for (int i = 0; i < Steps; i++)
        {
            double rpm = low + ((i + 0.5) * width);
            bool next = rpm > shiftRpm;
            double torque = engine.TorqueAt(RotationalSpeed.FromRevolutionsPerMinute(next ? rpm / step : rpm)).NewtonMeters;
            time += width / (next ? torque / step : torque);
        }

        return time;
    }
}
