using Layshaft.Engineering.Gearing;
using Layshaft.Engineering.Tests.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Wheel force, resistance, rotating mass, top speed and acceleration against worked examples.</summary>
public class RoadLoadExamples
{
    private static readonly VehicleSpec s_bare = TestCars.Spec with
    {
        DownforceArea = Area.Zero,
        RollingDoublesAt = null,
        WheelInertia = MassMomentOfInertia.Zero,
        EngineInertia = MassMomentOfInertia.Zero,
        DrivenAxle = DrivenAxle.Both,
        Grip = 5,
        ShiftTime = Duration.Zero,
    };

    private static Drivetrain Single(double ratio, double finalDrive) => Drivetrain.Create(
        TestCars.Gears(ratio), null, FinalDrive.FromRatio(finalDrive).Require()).Require();

    private static AirState AirOf(double density) => // dry air at 15 °C of this density
        AirState.FromReadings(Pressure.FromPascals(density * 287.05287 * 288.15), Temperature.FromDegreesCelsius(15)).Require();

    [Fact]
    public void Tractive_effort_of_14253_lbf() // Bechtel handbook, sheet 6-6, 6.5 (read)
    {
        double torque = Torque.FromPoundForceFeet(606 * 0.85).NewtonMeters;
        Car car = TestCars.Car(
            Single(5.29, 10),
            s_bare with { Mass = Mass.FromKilograms(40_000), DrivelineEfficiency = 0.85 },
            TestCars.Curve((1000, torque), (3000, torque)),
            RollingTyre.FromMeasured(Length.FromInches(19.5 * 2 * Math.PI)).Require());
        Assert.Equal(14253, WheelForce.InGear(car, 1, Speed.FromMetersPerSecond(2)).PoundsForce, 0.5);
    }

    [Fact]
    public void Air_drag_of_923_4_N() // Mannering et al., ch. 2 problem 2.7, inputs and a volunteer's answer (read)
    {
        Car car = TestCars.Car(
            spec: s_bare with { DragArea = Area.FromSquareMeters(0.28 * 1.83948), RollingCoefficient = 0 },
            day: new Conditions(AirOf(1.06168037)));
        Assert.InRange(WheelForce.Resistance(car, Speed.FromMetersPerSecond(58.1152)).Newtons, 923.35, 923.45);
    }

    [Fact]
    public void Air_and_rolling_together_ask_136_4_lbf_ft() // Mannering 2.7 with the course formula 0.01(1 + V/147): inputs read
    {
        // 3400 lb, 0.01(1 + V/147): 78.1 lb beside 207.6 lb of drag.
        Car car = TestCars.Car(
            spec: s_bare with
            {
                Mass = Mass.FromPounds(3400),
                DragArea = Area.FromSquareMeters(0.28 * 1.83948),
                RollingCoefficient = 0.01,
                RollingDoublesAt = Speed.FromFeetPerSecond(147),
            },
            day: new Conditions(AirOf(1.06168037)));
        Speed speed = Speed.FromMetersPerSecond(58.1152);
        double rolling = WheelForce.Resistance(car, speed).PoundsForce - (923.41 / 4.4482216152605);
        Assert.Equal(78.1, rolling, 5e-2);
    }

    [Fact]
    public void The_greatest_grade_of_9_12_per_cent() // Mannering 2.6: inputs read, the answer our own arithmetic
    {
        Car car = TestCars.Car(
            Single(1, 3.2),
            s_bare with
            {
                Mass = Mass.FromPounds(3200),
                DragArea = Area.FromSquareFeet(0.35 * 25),
                RollingCoefficient = 0.01,
                RollingDoublesAt = Speed.FromFeetPerSecond(147),
                DrivelineEfficiency = 0.93,
            },
            TestCars.Curve((1000, Torque.FromPoundForceFeet(210).NewtonMeters), (5000, Torque.FromPoundForceFeet(210).NewtonMeters)),
            RollingTyre.FromMeasured(Length.FromInches(14 * 2 * Math.PI), new RollingState { Slip = 0.035 }).Require(),
            new Conditions(AirOf(Density.FromSlugsPerCubicFoot(0.002378).KilogramsPerCubicMeter)));
        SpeedTable table = SpeedTable.For(car.Drivetrain, car.Tyre, RotationalSpeed.FromRevolutionsPerMinute(3600)).Require();
        Speed speed = table.Rows[0].SpeedAtLimit;
        Assert.Equal(132.634, speed.FeetPerSecond, 5e-3);
        Assert.Equal(535.68, WheelForce.InGear(car, 1, speed).PoundsForce, 5e-2);
        double surplus = (WheelForce.InGear(car, 1, speed) - WheelForce.Resistance(car, speed)).PoundsForce;
        Assert.InRange(surplus / 3200, 0.0911, 0.0913); // the example takes the grade as force over weight
    }

    [Fact]
    public void Power_at_110_km_per_h_against_180_and_1000_N_is_53_8_hp() // cartalk 53231 (read)
    {
        double watts = (180 + 1000) * Speed.FromKilometersPerHour(110).MetersPerSecond / 0.90;
        Assert.InRange(Horsepower.Mechanical(Power.FromWatts(watts)), 53.6, 53.9);
    }

    [Theory] // university course sheet CE 370 (formula read): 1.04 + 0.0025·e0²
    [InlineData(10, 1.29)]
    [InlineData(3, 1.0625)]
    public void The_course_mass_factor_comes_out_of_the_inertias_that_stand_behind_it(double overallRatio, double factor)
    {
        const double RadiusM = 0.3, MassKg = 1200;
        VehicleSpec spec = s_bare with
        {
            Mass = Mass.FromKilograms(MassKg),
            DrivelineEfficiency = 1,
            WheelInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.04 * MassKg * RadiusM * RadiusM),
            EngineInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.0025 * MassKg * RadiusM * RadiusM),
        };
        Car car = TestCars.Car(
            Single(1, overallRatio), spec, tyre: RollingTyre.FromMeasured(Length.FromMeters(2 * Math.PI * RadiusM)).Require());
        Assert.Equal(factor, WheelForce.MassFactor(car, 1), 5e-10);
    }

    /// <summary>
    /// The light truck of Yu Zhisheng, Automobile Theory, exercise 1.3 (data read in public solutions): 0.377 for the speed
    /// constant, 21.15 for the air, g 9.8, as printed there.
    /// </summary>
    private static Car Yu()
    {
        const double Gravity = 9.8, StandardGravity = 9.80665;
        double radius = 0.367 * 0.377 / (3.6 * Math.PI / 30);
        var points = new List<(double Rpm, double Nm)>();
        for (double rpm = 600; rpm <= 4000; rpm += 20)
        {
            double x = rpm / 1000;
            points.Add((rpm, -19.313 + (x * (295.27 + (x * (-165.44 + (x * (40.874 + (x * -3.8445)))))))));
        }

        return TestCars.Car(
            Drivetrain.Create(TestCars.Gears(5.56, 2.769, 1.644, 1.00, 0.793), null, FinalDrive.FromRatio(5.83).Require()).Require(),
            s_bare with
            {
                Mass = Mass.FromKilograms(3880),
                DrivelineEfficiency = 0.85 * radius / 0.367, // the force is worked with the true radius
                RollingCoefficient = 0.013 * Gravity / StandardGravity,
                DragArea = Area.FromSquareMeters(2.77),
                WheelInertia = MassMomentOfInertia.FromKilogramSquareMeters(1.798 + 3.598),
                EngineInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.218),
            },
            TestCars.Curve([.. points]),
            RollingTyre.FromMeasured(Length.FromMeters(2 * Math.PI * radius)).Require(),
            new Conditions(AirOf(2 * 3.6 * 3.6 / 21.15)));
    }

    [Fact]
    public void The_drag_limited_top_speed_of_the_light_truck_is_99_08_km_per_h() // inputs read, answer from memory
    {
        TopSpeed top = TopSpeed.For(Yu()).Require();
        Assert.Equal(5, top.Best.Gear);
        Assert.Equal(TopSpeedStop.Drag, top.Best.Stop);
        Assert.InRange(top.Best.Speed.KilometersPerHour, 99.07, 99.09);
    }

    [Fact]
    public void The_light_truck_climbs_a_grade_of_0_352_in_first() // inputs read, answer from memory: tan(asin(D − f))
    {
        Car truck = Yu();
        double best = Enumerable.Range(1, 400).Max(i =>
        {
            Speed speed = Speed.FromMetersPerSecond(i * 0.01);
            double dynamic = (WheelForce.InGear(truck, 1, speed) - WheelForce.Resistance(truck, speed)).Newtons
                + (0.013 * 3880 * 9.8);
            return (dynamic / (3880 * 9.8)) - 0.013;
        });
        Assert.InRange(Math.Tan(Math.Asin(best)), 0.3515, 0.3530);
    }

    [Fact]
    public void The_rotating_mass_factors_of_the_light_truck() // inputs read, answers our own arithmetic
    {
        double[] expected = [1.3829, 1.1027, 1.0429, 1.0224, 1.0179];
        Car truck = Yu();
        for (int gear = 1; gear <= 5; gear++)
        {
            Assert.InRange(WheelForce.MassFactor(truck, gear), expected[gear - 1] - 2e-4, expected[gear - 1] + 2e-4);
        }
    }

    [Theory] // inputs and equations read (exercise 1.3); the integral ∫δ·m/(F_t − F_f − F_w)·dv by Simpson's rule from them alone
    [InlineData(2.769, 2, 12, 34)]
    [InlineData(1.644, 3, 40, 57)]
    [InlineData(1.00, 4, 60, 90)]
    public void The_light_truck_gains_speed_in_a_gear_as_the_exercise_integrates_it(double gearRatio, int gear, double fromKmh, double toKmh)
    {
        const int Steps = 400;
        double Inverse(double kmh) // s per m/s, the exercise's own equations
        {
            double rpm = kmh * gearRatio * 5.83 / (0.377 * 0.367), x = rpm / 1000;
            double torque = -19.313 + (x * (295.27 + (x * (-165.44 + (x * (40.874 + (x * -3.8445)))))));
            double force = torque * gearRatio * 5.83 * 0.85 / 0.367;
            double factor = 1 + ((1.798 + 3.598 + (0.218 * gearRatio * gearRatio * 5.83 * 5.83 * 0.85)) / (3880 * 0.367 * 0.367));
            return factor * 3880 / (force - (3880 * 9.8 * 0.013) - (2.77 * kmh * kmh / 21.15));
        }

        double step = (toKmh - fromKmh) / Steps;
        double expected = Enumerable.Range(0, Steps).Sum(i =>
        {
            double at = fromKmh + (i * step);
            return step / 6 * (Inverse(at) + (4 * Inverse(at + (step / 2))) + Inverse(at + step)) / 3.6;
        });
        Car truck = Yu();
        Drivetrain single = Drivetrain.Create(TestCars.Gears(gearRatio), null, FinalDrive.FromRatio(5.83).Require()).Require();
        Venue venue = Venue.Create("road", [TestCars.Straight("s", 3000, fromKmh / 3.6, 100)]).Require();
        StraightRun run = VenueRun.For(truck.With(single), venue).Straights[0];
        Assert.InRange(gear, 2, 4);
        Assert.Equal(expected, TimeTo(run, toKmh / 3.6), 2e-3 * expected);
    }

    [Fact]
    public void The_light_truck_shifts_at_the_limiter_since_the_forces_do_not_cross() // rule from memory, inputs read
    {
        Car truck = Yu();
        Assert.All(UpshiftPlan.For(truck.Drivetrain, truck.Engine).Skip(1).Take(2), shift =>
        {
            Assert.Equal(UpshiftReason.Limiter, shift.Reason);
            Assert.Empty(shift.Crossings);
            Assert.Equal(4000, shift.At.RevolutionsPerMinute, 5e-10);
        });
    }

    private static double TimeTo(StraightRun run, double speedMps)
    {
        TracePoint before = run.Trace.Last(point => point.SpeedMps < speedMps && point.Gear > 0);
        TracePoint after = run.Trace.First(point => point.SpeedMps >= speedMps);
        return before.TimeS + ((speedMps - before.SpeedMps) / (after.SpeedMps - before.SpeedMps) * (after.TimeS - before.TimeS));
    }
}
