using CsCheck;
using Layshaft.Engineering.Gearing;
using Layshaft.Engineering.Tests.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Motions with a closed form (any textbook of mechanics; derived here) against the integrator, to 1e-7 of the figure (1e-4 where a law does not tell of its bend); whole runs to 1e-6.</summary>
public class ClosedFormMotions
{
    private readonly struct Law(Func<double, double> acceleration, double? bendMps = null, double kinkMps = 0) : IAccelerationLaw
    {
        public double At(double speedMps) => acceleration(speedMps);

        public double At(double speedMps, out bool isGripped)
        {
            isGripped = speedMps < kinkMps;
            return acceleration(speedMps);
        }

        public double? NextBend(double speedMps, bool isRising) => bendMps is { } bend && (isRising ? bend > speedMps : bend < speedMps) ? bend : null;
    }

    private static MotionBounds Open => new()
    {
        UntilTimeS = double.PositiveInfinity,
        RiseToMps = double.PositiveInfinity,
        FallToMps = double.NegativeInfinity,
        FinishM = double.PositiveInfinity,
    };

    [Fact]
    public void Constant_force_to_a_place() => Gen.Select(Gen.Double[0.2, 12], Gen.Double[0, 40], Gen.Double[10, 2000])
        .Sample((a, v0, length) =>
        {
            var motion = new Motion { SpeedMps = v0 };
            MotionBounds bounds = Open;
            bounds.FinishM = length;
            Assert.Equal(MotionEnd.Finished, Advance(new Law(_ => a), ref motion, bounds));
            double v = Math.Sqrt((v0 * v0) + (2 * a * length));
            Near(v, motion.SpeedMps);
            Near((v - v0) / a, motion.TimeS);
        });

    [Fact]
    public void Constant_power_to_a_place_and_to_a_speed() => Gen.Select(Gen.Double[50, 400], Gen.Double[3, 40], Gen.Double[20, 2000])
        .Sample((powerPerMass, v0, length) =>
        {
            var motion = new Motion { SpeedMps = v0 };
            MotionBounds bounds = Open;
            bounds.FinishM = length;
            Advance(new Law(v => powerPerMass / v), ref motion, bounds);
            double v = Math.Cbrt((v0 * v0 * v0) + (3 * powerPerMass * length));
            Near(v, motion.SpeedMps);
            Near(((v * v) - (v0 * v0)) / (2 * powerPerMass), motion.TimeS);

            motion = new Motion { SpeedMps = v0 };
            bounds = Open;
            bounds.RiseToMps = v;
            Assert.Equal(MotionEnd.SpeedRisen, Advance(new Law(u => powerPerMass / u), ref motion, bounds));
            Near(1, motion.PositionM / length);
        });

    [Fact]
    public void Quadratic_drag_coasting_for_a_time() => Gen.Select(Gen.Double[1e-4, 1e-2], Gen.Double[5, 90], Gen.Double[0.05, 20])
        .Sample((k, v0, time) =>
        {
            var motion = new Motion { SpeedMps = v0 };
            MotionBounds bounds = Open;
            bounds.UntilTimeS = time;
            Assert.Equal(MotionEnd.TimeUp, Advance(new Law(v => -k * v * v), ref motion, bounds));
            Near(v0 / (1 + (k * v0 * time)), motion.SpeedMps);
            Near(Math.Log(1 + (k * v0 * time)) / k, motion.PositionM);
        });

    [Fact]
    public void Constant_force_against_quadratic_drag_to_a_place() => Gen.Select(Gen.Double[2, 10], Gen.Double[1e-4, 3e-3], Gen.Double[20, 3000])
        .Sample((a, k, length) =>
        {
            var motion = default(Motion);
            MotionBounds bounds = Open;
            bounds.FinishM = length;
            Advance(new Law(v => a - (k * v * v)), ref motion, bounds);
            double v = Math.Sqrt(a / k * (1 - Math.Exp(-2 * k * length)));
            Near(v, motion.SpeedMps);
            Near(Math.Atanh(v * Math.Sqrt(k / a)) / Math.Sqrt(a * k), motion.TimeS);
        });

    [Fact]
    public void Constant_force_that_falls_with_speed_above_a_bend() => Gen.Select(
        Gen.Double[2, 10], Gen.Double[0.01, 0.3], Gen.Double[10, 60], Gen.Double[0.1, 0.9], Gen.Bool)
        .Sample((a, k, bend, share, isTold) =>
        {
            double rise = share * a / k;
            var law = new Law(v => a - (k * Math.Max(0, v - bend)), isTold ? bend : null, isTold ? 0 : bend);
            var motion = new Motion { SpeedMps = 5 };
            MotionBounds bounds = Open;
            bounds.RiseToMps = bend + rise;

            // A kink where grip gives way to the engine is met by a drawn run by the size of its steps alone.
            Assert.Equal(MotionEnd.SpeedRisen, Advance(law, ref motion, bounds, isTold ? 1e-7 : 1e-4));
            double logarithm = Math.Log(a / (a - (k * rise))) / k;
            Near(((bend - 5) / a) + logarithm, motion.TimeS);
            Near((((bend * bend) - 25) / (2 * a)) + ((bend + (a / k)) * logarithm) - (rise / k), motion.PositionM);
        });

    [Fact]
    public void A_flat_torque_curve_without_losses_is_a_constant_force_down_a_whole_straight_with_braking()
    {
        VehicleSpec spec = Frictionless(1000);
        EngineCurve engine = TestCars.Curve((500, 200), (20000, 200));
        RollingTyre tyre = RollingTyre.FromMeasured(Length.FromMeters(2)).Require();
        Drivetrain train = Drivetrain.Create(TestCars.Gears(1), null, FinalDrive.FromRatio(3).Require()).Require();
        Straight straight = TestCars.Straight("s", 500, 20, 15);
        StraightRun run = VenueRun.For(
            TestCars.Car(train, spec, engine, tyre), Venue.Create("v", [straight]).Require()).Straights[0];

        const double Braking = 11;
        double a = 200 * 3 / (2 / (2 * Math.PI)) / 1000;
        double brakingFrom = ((2 * Braking * 500) + (15.0 * 15) - (20.0 * 20)) / (2 * (a + Braking));
        double top = Math.Sqrt((20.0 * 20) + (2 * a * brakingFrom));
        Assert.Equal(brakingFrom, run.BrakingPoint.Meters, 5e-7);
        Assert.Equal(top, run.TopSpeed.MetersPerSecond, 5e-7);
        Assert.Equal(((top - 20) / a) + ((top - 15) / Braking), run.Time.Seconds, 5e-7);
        Assert.Null(run.Fault);
    }

    [Fact]
    public void The_ideal_without_losses_is_constant_power()
    {
        VehicleSpec spec = Frictionless(1000);
        EngineCurve engine = TestCars.Curve((3000, 200), (6000, 200));
        Straight straight = TestCars.Straight("s", 400, 20, 100);
        StraightRun run = VenueRun.Ideal(
            TestCars.Car(spec: spec, engine: engine, tyre: RollingTyre.FromMeasured(Length.FromMeters(2)).Require()),
            Venue.Create("v", [straight]).Require()).Straights[0];
        double power = 200 * 6000 * Math.PI / 30 / 1000;
        double v = Math.Cbrt(8000 + (3 * power * 400));
        Assert.Equal(v, run.ReachedSpeed.MetersPerSecond, 5e-7);
        Assert.Equal(((v * v) - 400) / (2 * power), run.Time.Seconds, 5e-7);
        Assert.Equal(GearingFaultKind.CornerUnreachable, run.Fault!.Kind);
    }

    // Both integrators: that of drawn runs, and that of runs for their figures alone.
    private static MotionEnd Advance(Law law, ref Motion motion, MotionBounds bounds, double within = 1e-7)
    {
        Motion drawn = motion;
        MotionEnd end = MotionIntegrator.Advance(law, ref drawn, bounds, new MotionTrace());
        Assert.Equal(end, MotionIntegrator.Advance(law, ref motion, bounds));
        Near(drawn.TimeS, motion.TimeS, within);
        Near(drawn.PositionM, motion.PositionM, within);
        Near(drawn.SpeedMps, motion.SpeedMps, within);
        return end;
    }

    private static void Near(double expected, double actual, double within = 1e-7) => Assert.InRange(
        actual - expected, -within * Math.Max(1, Math.Abs(expected)), within * Math.Max(1, Math.Abs(expected)));

    private static VehicleSpec Frictionless(double massKg) => TestCars.Spec with
    {
        Mass = Mass.FromKilograms(massKg),
        DragArea = Area.Zero,
        DownforceArea = Area.Zero,
        RollingCoefficient = 0,
        DrivelineEfficiency = 1,
        WheelInertia = MassMomentOfInertia.Zero,
        EngineInertia = MassMomentOfInertia.Zero,
        DrivenAxle = DrivenAxle.Both,
        Grip = 5,
    };
}
