using CsCheck;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.Gearing;

public class VenueRunTests
{
    private static StraightRun Run(Car car, Straight straight) =>
        VenueRun.For(car, Venue.Create("venue", [straight]).Require()).Straights[0];

    [Fact]
    public void A_real_run_is_told_from_exit_to_entry()
    {
        StraightRun run = Run(TestCars.Car(), TestCars.Straight("s", 700, 25, 22));
        Assert.Null(run.Fault);
        Assert.NotEmpty(run.Shifts);
        Assert.Equal(700, run.Trace[^1].PositionM, 5e-10);
        Assert.Equal(22, run.Trace[^1].SpeedMps, 5e-10);
        Assert.Equal(run.Time.Seconds, run.Trace[^1].TimeS, 5e-10);
        Assert.All(run.Trace.Zip(run.Trace.Skip(1)), pair =>
        {
            Assert.True(pair.Second.TimeS >= pair.First.TimeS);
            Assert.True(pair.Second.PositionM >= pair.First.PositionM - 1e-9);
        });
        double braking = ((run.BrakingSpeed.MetersPerSecond * run.BrakingSpeed.MetersPerSecond) - (22 * 22)) / 22;
        Assert.Equal(700 - braking, run.BrakingPoint.Meters, 5e-7);
    }

    [Fact]
    public void Each_shift_is_made_at_the_planned_engine_speed_and_costs_its_time()
    {
        Car car = TestCars.Car();
        StraightRun run = Run(car, TestCars.Straight("s", 900, 25, 22));
        IReadOnlyList<Upshift> plan = UpshiftPlan.For(car.Drivetrain, car.Engine);
        SpeedTable table = SpeedTable.For(car);
        Assert.All(run.Shifts, shift => Assert.Equal(
            plan[shift.From - 1].At.RevolutionsPerMinute,
            table.EngineSpeedAt(shift.From, shift.SpeedBefore).RevolutionsPerMinute,
            4));
        Assert.All(run.Shifts, shift => Assert.True(shift.SpeedAfter < shift.SpeedBefore));
        Car quick = TestCars.Car(spec: TestCars.Spec with { ShiftTime = Duration.Zero });
        Assert.True(Run(quick, TestCars.Straight("s", 900, 25, 22)).Time < run.Time);
    }

    [Fact]
    public void Time_is_the_integral_of_the_trace()
    {
        // An independent sum over the trace (trapezium in place over speed) agrees with the reported time.
        StraightRun run = Run(TestCars.Car(), TestCars.Straight("s", 800, 20, 30));
        double sum = run.Trace.Zip(run.Trace.Skip(1))
            .Sum(pair => 2 * (pair.Second.PositionM - pair.First.PositionM) / (pair.Second.SpeedMps + pair.First.SpeedMps));
        Assert.Equal(sum, run.Time.Seconds, 5e-3);
    }

    [Fact]
    public void A_corner_faster_than_the_straight_can_reach_is_a_fault_with_the_speed_reached()
    {
        StraightRun run = Run(TestCars.Car(), TestCars.Straight("the kink", 60, 20, 60));
        Assert.Equal(GearingFaultKind.CornerUnreachable, run.Fault!.Kind);
        Assert.Equal(run.ReachedSpeed.MetersPerSecond, run.Fault.Figure!.Value, 5e-10);
        Assert.InRange(run.ReachedSpeed.MetersPerSecond, 20, 40);
        Assert.True(double.IsFinite(run.Time.Seconds));
        Assert.Contains("the kink", run.Fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_car_that_cannot_pull_itself_up_a_hill_is_a_fault_not_a_hang()
    {
        Car weak = TestCars.Car(engine: TestCars.Curve((1000, 4), (6000, 4)));
        StraightRun run = Run(weak, TestCars.Straight("hill", 1000, 5, 5, grade: 0.3));
        Assert.Equal(GearingFaultKind.CannotPull, run.Fault!.Kind);
    }

    [Fact]
    public void A_start_above_top_gear_is_a_fault_and_is_driven_from_the_limiter()
    {
        StraightRun run = Run(TestCars.Car(TestCars.Train(finalDrive: 9)), TestCars.Straight("s", 300, 60, 20));
        Assert.Equal(GearingFaultKind.StartAboveTopGear, run.Fault!.Kind);
        Assert.True(run.TopSpeed.MetersPerSecond < 60);
        Assert.True(run.OnLimiter.Seconds > 0);
    }

    [Fact]
    public void A_short_gear_ends_on_the_limiter_and_the_time_there_is_counted()
    {
        StraightRun run = Run(TestCars.Car(TestCars.Train(finalDrive: 6)), TestCars.Straight("s", 900, 25, 25));
        Assert.True(run.OnLimiter.Seconds > 1);
        Assert.Equal(8200, run.EngineSpeedAtTop!.Value.RevolutionsPerMinute, 5e-5);
        Assert.Equal(5, run.TopSpeedGear);
    }

    [Fact]
    public void The_last_upshift_is_left_out_when_it_does_not_pay()
    {
        // Just past the shift speed of first gear the brakes come on: to hold the gear on the limiter is quicker.
        Car slow = TestCars.Car(spec: TestCars.Spec with { ShiftTime = Duration.FromSeconds(0.5) });
        Straight longer = TestCars.Straight("s", 900, 25, 20, minimumMps: 12);
        double firstShift = Run(slow, longer).Shifts[0].Position.Meters;
        StraightRun run = Run(slow, TestCars.Straight("s", firstShift + 20, 25, 20, minimumMps: 12));
        Assert.Empty(run.Shifts);
        Assert.True(run.OnLimiter.Seconds > 0);
    }

    [Fact]
    public void A_given_braking_point_is_where_the_brakes_come_on()
    {
        Straight straight = TestCars.Straight("s", 500, 25, 20) with { BrakingDistance = Length.FromMeters(90) };
        StraightRun run = Run(TestCars.Car(), straight);
        Assert.Equal(410, run.BrakingPoint.Meters, 5e-7);
        Assert.Null(run.Fault);
        StraightRun fast = Run(TestCars.Car(), straight with { EndSpeed = Speed.FromMetersPerSecond(45) });
        Assert.Null(fast.Fault);
        Assert.Equal(45, fast.ReachedSpeed.MetersPerSecond, 5e-7);
    }

    [Fact]
    public void A_standing_start_is_limited_by_grip_at_first()
    {
        Straight straight = TestCars.Straight("start", 300, 0, 10);
        StraightRun run = Run(TestCars.Car(TestCars.Train(finalDrive: 5), TestCars.Spec with { Grip = 0.8 }), straight);
        StraightRun slick = Run(
            TestCars.Car(TestCars.Train(finalDrive: 5), TestCars.Spec with { Grip = 1.0 }), straight);
        Assert.True(slick.Time < run.Time);
        Assert.Null(run.Fault);
    }

    [Fact]
    public void A_head_wind_and_a_hill_cost_time_and_a_tow_saves_it()
    {
        Straight straight = TestCars.Straight("s", 900, 25, 25);
        double Time(Car car, Straight on) => Run(car, on).Time.Seconds;
        double calm = Time(TestCars.Car(), straight);
        Conditions day = new(TestCars.SeaLevel);
        Assert.True(Time(TestCars.Car(day: day with { Wind = new Wind(Speed.FromMetersPerSecond(8)) }), straight) > calm);
        Assert.True(Time(TestCars.Car(), straight with { Grade = 0.04 }) > calm);
        Assert.True(Time(TestCars.Car(day: day with { DragFactor = 0.7 }), straight) < calm);
        var fromNorth = new Wind(Speed.FromMetersPerSecond(8), Angle.Zero);
        Car northerly = TestCars.Car(day: day with { Wind = fromNorth });
        Assert.True(Time(northerly, straight with { Heading = Angle.Zero }) > calm);
        Assert.True(Time(northerly, straight with { Heading = Angle.FromDegrees(180) }) < calm);
    }

    [Fact]
    public void The_ideal_is_never_slower_than_a_real_gearing() => Gen.Select(
            Gen.Int[18, 34], Gen.Int[18, 34], Gen.Double[3, 5.5], Gen.Double[30, 1500], Gen.Double[0, 45], Gen.Double[10, 45], Gen.Double[-0.08, 0.08])
        .Sample((driver, driven, final, length, start, end, grade) =>
        {
            Straight straight = TestCars.Straight("s", length, start, end, grade);
            if (!Venue.Create("v", [straight]).TryGet(out Venue? venue))
            {
                return;
            }

            Car car = TestCars.Car(TestCars.Train(new ToothPair(driver, driven), final));
            StraightRun real = VenueRun.For(car, venue).Straights[0];
            if (real.Fault?.Kind is not (GearingFaultKind.CannotPull or GearingFaultKind.NotFinished))
            {
                Assert.True(VenueRun.Ideal(car, venue).Straights[0].Time.Seconds <= real.Time.Seconds + 1e-6);
            }
        }, iter: 100);

    [Fact]
    public void No_corner_speed_or_venue_makes_a_figure_that_is_not_finite() => Gen.Select(
            Gen.Double[5, 3000], Gen.Double[0, 150], Gen.Double[0, 150], Gen.Double[-0.4, 0.4], Gen.Double[2, 12])
        .Sample((length, start, end, grade, final) =>
        {
            if (Venue.Create("v", [TestCars.Straight("s", length, start, end, grade)]).TryGet(out Venue? venue))
            {
                StraightRun run = VenueRun.For(TestCars.Car(TestCars.Train(finalDrive: final)), venue).Straights[0];
                Assert.True(double.IsFinite(run.Time.Seconds) && run.Time.Seconds is >= 0 and < 1000);
                Assert.True(double.IsFinite(run.TopSpeed.MetersPerSecond));
                Assert.All(run.Trace, point => Assert.True(double.IsFinite(point.TimeS + point.PositionM + point.SpeedMps)));
            }
        }, iter: 100);

    [Fact]
    public void Lengths_and_speeds_scale_together()
    {
        // Twice the mass, force and inertia leave every motion as it is when nothing else acts.
        VehicleSpec free = TestCars.Spec with { DragArea = Area.Zero, DownforceArea = Area.Zero };
        VehicleSpec heavy = free with
        {
            Mass = free.Mass * 2,
            WheelInertia = free.WheelInertia * 2,
            EngineInertia = free.EngineInertia * 2,
        };
        EngineCurve strong = TestCars.Curve([.. TestCars.RaceEngine.Points.Select(p => (p.EngineSpeed.RevolutionsPerMinute, 2 * p.Torque.NewtonMeters))]);
        Straight straight = TestCars.Straight("s", 600, 20, 20);
        Assert.Equal(
            Run(TestCars.Car(spec: free), straight).Time.Seconds,
            Run(TestCars.Car(spec: heavy, engine: strong), straight).Time.Seconds,
            8);
    }

    [Fact]
    public void Bad_figures_of_a_car_are_all_told_at_once()
    {
        Outcome<Vehicle> outcome = Vehicle.Create(TestCars.Spec with { Mass = Mass.Zero, Grip = -1, ShiftTime = Duration.FromSeconds(9) });
        Assert.Equal(["mass", "grip", "shift_time"], outcome.Faults.Select(fault => fault.Subject));
        Assert.Throws<InvalidOperationException>(outcome.Require);
    }

    [Fact]
    public void A_straight_too_short_to_brake_is_a_fault()
    {
        GearingFault fault = Assert.Single(Venue.Create("v", [TestCars.Straight("s", 50, 60, 10)]).Faults);
        Assert.Equal(GearingFaultKind.StraightTooShortToBrake, fault.Kind);
        Assert.Equal(GearingFaultKind.NoStraights, Venue.Create("v", []).Faults[0].Kind);
    }

    [Fact]
    public void Corner_gears_tell_whether_a_corner_falls_between_gears()
    {
        Car car = TestCars.Car(engine: EngineCurve.Create(
            TestCars.RaceEngine.Points, usableFrom: RotationalSpeed.FromRevolutionsPerMinute(5500)).Require());
        SpeedTable table = SpeedTable.For(car);
        double second = table.Rows[1].SpeedAtLimit.MetersPerSecond;
        Straight Corner(double minimum, double exit) => TestCars.Straight("s", 400, exit, 20, minimumMps: minimum);
        Venue venue = Venue.Create("v", [Corner(second * 0.82, second * 0.99), Corner(second * 0.82, second * 1.05), Corner(5, 6)]).Require();
        IReadOnlyList<CornerGear> corners = VenueRun.For(car, venue).Corners;
        Assert.Equal([CornerFit.InBand, CornerFit.BetweenGears, CornerFit.BelowBand], corners.Select(corner => corner.Fit));
        Assert.Equal([2, 2, 1], corners.Select(corner => corner.Gear));
        Assert.Equal([2, 3, 1], corners.Select(corner => corner.ExitGear));
        Assert.True(corners[1].EngineSpeed.RevolutionsPerMinute > 5500);
    }

    [Fact]
    public void The_run_begins_in_the_corners_gear() => Gen.Select(Gen.Double[3, 45], Gen.Double[0.7, 1], Gen.Double[3, 6])
        .Sample((exit, share, final) =>
        {
            Venue venue = Venue.Create("v", [TestCars.Straight("s", 400, exit, 40, minimumMps: exit * share)]).Require();
            VenueRun run = VenueRun.For(TestCars.Car(TestCars.Train(finalDrive: final)), venue);
            if (run.Faults.All(fault => fault.Kind != GearingFaultKind.StartAboveTopGear))
            {
                Assert.Equal(run.Corners[0].ExitGear, run.Straights[0].Trace[0].Gear);
            }
        });

    [Fact]
    public void The_gear_out_of_a_corner_is_the_quicker_of_the_two_that_serve_it() => Gen.Select(
            Gen.Double[12, 45], Gen.Double[0.8, 1], Gen.Double[3, 6], Gen.Double[60, 1500], Gen.Double[0, 0.3], Gen.Double[-0.05, 0.05])
        .Sample((exit, share, final, length, shift, grade) =>
        {
            Straight straight = TestCars.Straight("s", length, exit, 20, grade, exit * share);
            Car car = TestCars.Car(TestCars.Train(finalDrive: final), TestCars.Spec with { ShiftTime = Duration.FromSeconds(shift) });
            var model = new CarModel(car);
            var gears = new GearLimits(model, car.Drivetrain, GearLimits.ShiftRpm(car.Drivetrain, car.Engine));
            if (exit > gears.LimiterMps[^1] || !Venue.Create("v", [straight]).TryGet(out _))
            {
                return;
            }

            var task = new StraightTask(straight, model);
            CornerExit shorter = CornerExit.Shortest(model, gears, exit * share, exit);
            double chosen = StraightRunner.Run(model, gears, task).TimeS;
            double least = StraightRunner.Run(model, gears, task, shorter, null).TimeS;
            double broughtS = 0;
            if (shorter.Longer(model, gears, exit * share, exit) is { } longer)
            {
                LongerGear.Weigh(model, gears, task, shorter.Gear, exit, out broughtS);
                least = Math.Min(least + broughtS, StraightRunner.Run(model, gears, task, longer, null).TimeS);
            }

            Assert.InRange(chosen, least - broughtS - 1e-9, least + 3e-3);
        }, iter: 3000);

    [Fact]
    public void A_shift_inside_a_corner_costs_its_time()
    {
        Car car = TestCars.Car(engine: EngineCurve.Create(
            TestCars.RaceEngine.Points, usableFrom: RotationalSpeed.FromRevolutionsPerMinute(5500)).Require());
        double second = SpeedTable.For(car).Rows[1].SpeedAtLimit.MetersPerSecond;
        Straight straight = TestCars.Straight("s", 400, second * 1.05, 20, minimumMps: second * 0.82);
        StraightRun between = Run(car, straight);
        StraightRun steady = Run(car, straight with { CornerMinimum = null });
        Assert.Equal((2, 3), (between.Shifts[0].From, between.Shifts[0].To));
        Assert.Equal(0, between.Shifts[0].Position.Meters);
        Assert.Equal(steady.Time.Seconds + 0.12, between.Time.Seconds, 1e-9);
    }

    [Fact]
    public void At_an_upshift_the_energy_of_engine_and_car_is_kept_but_for_what_slips() => Gen.Select(
            Gen.Double[0.02, 0.4], Gen.Double[0, 6], Gen.Double[400, 2000], Gen.Double[0.5, 5], Gen.Double[12, 28])
        .Sample((engine, wheels, mass, mu, speed) =>
        {
            VehicleSpec spec = TestCars.Spec with
            {
                Mass = Mass.FromKilograms(mass),
                EngineInertia = MassMomentOfInertia.FromKilogramSquareMeters(engine),
                WheelInertia = MassMomentOfInertia.FromKilogramSquareMeters(wheels),
                DrivelineEfficiency = 1,
                DrivenAxle = DrivenAxle.Both,
                Grip = mu,
            };
            RollingTyre rigid = RollingTyre.FromMeasured(Length.FromMeters(1.9)).Require();
            Car car = TestCars.Car(spec: spec, tyre: rigid);
            var model = new CarModel(car);
            var gears = new GearLimits(model, car.Drivetrain, GearLimits.ShiftRpm(car.Drivetrain, car.Engine));
            var road = new RoadLoad(model, 0, 0);
            EngineMomentum momentum = EngineMomentum.At(model, gears, road, 0, speed, speed);
            double square = rigid.Radius.Meters * rigid.Radius.Meters, carKg = mass + (wheels / square);
            double resistance = road.ResistanceN(speed, out double grip);
            double after = speed + (momentum.Mps2 * momentum.TimeS);
            double ratio = gears.OverallRatio[1];
            double First(double mps) => mps * gears.OverallRatio[0] / rigid.Radius.Meters;
            double before = (0.5 * carKg * speed * speed) + (0.5 * engine * First(speed) * First(speed));
            double now = (0.5 * carKg * after * after) + (0.5 * engine * after * after * ratio * ratio / square);
            double engineMps = First(speed) * rigid.Radius.Meters / ratio;
            double force = WheelForce.InGear(car, 2, Speed.FromMetersPerSecond(speed)).Newtons;
            double given = force * momentum.TimeS * (engineMps + after) / 2;
            double spent = (resistance * momentum.TimeS * (speed + after) / 2) + (grip * momentum.TimeS * (engineMps - speed) / 2);
            Assert.True(after > speed);
            Assert.Equal(before + given, now + spent, 1e-9 * before);

            // The more the tyres grip, the nearer it comes to the inelastic engagement, in which the dogs lose ½·J₁J₂/(J₁ + J₂)·Δω².
            double engineKg = engine * ratio * ratio / square;
            double inelastic = ((engineKg * engineMps) + (carKg * speed)) / (engineKg + carKg);
            Assert.Equal(inelastic, after - ((force - resistance) / (engineKg + carKg) * momentum.TimeS), 1e-9 * inelastic);
        });

    [Fact]
    public void Slip_goes_with_the_force_of_the_gear()
    {
        Car car = TestCars.Car(tyre: RollingTyre.FromMeasured(Length.FromMeters(1.9), new RollingState { Slip = 0.05 }).Require());
        SpeedTable table = SpeedTable.For(car);
        double[] slip = [.. table.Rows.Select(row => 1 - (row.SpeedAtLimit.MetersPerSecond * row.OverallRatio / (1.9 * 8200 / 60)))];
        Assert.All(slip.Zip(slip.Skip(1)), pair => Assert.InRange(pair.First / pair.Second, 1.06, 1.34)); // as the steps between the gears
        Assert.InRange(slip[0], 0.03, 0.05);
        Assert.True(slip[4] < slip[0] / 2.3);
    }

    [Fact]
    public void A_standing_start_is_made_at_the_launch_speed_wherever_the_curve_begins()
    {
        Straight straight = TestCars.Straight("start", 200, 0, 10);
        EngineCurve With(params (double Rpm, double Nm)[] low) => EngineCurve.Create(
            [.. low.Select(p => new TorquePoint(RotationalSpeed.FromRevolutionsPerMinute(p.Rpm), Torque.FromNewtonMeters(p.Nm))), .. TestCars.RaceEngine.Points.Skip(2)],
            launch: RotationalSpeed.FromRevolutionsPerMinute(5000)).Require();
        double fromMiddle = Run(TestCars.Car(engine: With()), straight).Time.Seconds;
        double fromLow = Run(TestCars.Car(engine: With((800, 20), (2000, 70), (3500, 145))), straight).Time.Seconds;
        Assert.Equal(fromMiddle, fromLow, 0.01);
        Assert.Equal(5000, With().LaunchAt.RevolutionsPerMinute, 1e-9);
        Assert.Equal("launch", EngineCurve.Create(TestCars.RaceEngine.Points, launch: RotationalSpeed.FromRevolutionsPerMinute(9000)).Faults[0].Subject);
    }

    [Fact]
    public void Top_speed_tells_limiter_from_drag()
    {
        TopSpeed tall = TopSpeed.For(TestCars.Car(TestCars.Train(finalDrive: 3.4))).Require();
        Assert.Equal(TopSpeedStop.Drag, tall.Best.Stop);
        TopSpeed shortGeared = TopSpeed.For(TestCars.Car(TestCars.Train(finalDrive: 6))).Require();
        Assert.Equal(TopSpeedStop.Limiter, shortGeared.Best.Stop);
        Assert.Equal(8200, shortGeared.Best.EngineSpeed.RevolutionsPerMinute, 5e-7);
        Assert.Equal(TopSpeedStop.CannotHold, TopSpeed.For(TestCars.Car(), grade: 0.39).Require().Gears[4].Stop);
    }
}
