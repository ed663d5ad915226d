using CsCheck;
using Layshaft.Engineering.Gearing;
using Layshaft.Engineering.Tests.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>Coasting, starting and accelerating of whole cars against closed forms of the literature; each names its source.</summary>
public class StraightLineExamples
{
    private const double Gravity = 9.80665;

    private static readonly RollingTyre s_tyre = RollingTyre.FromMeasured(Length.FromMeters(1.9)).Require();

    private static readonly VehicleSpec s_bare = TestCars.Spec with
    {
        DownforceArea = Area.Zero,
        RollingCoefficient = 0,
        RollingDoublesAt = null,
        WheelInertia = MassMomentOfInertia.Zero,
        EngineInertia = MassMomentOfInertia.Zero,
        DrivelineEfficiency = 1,
        ShiftTime = Duration.Zero,
    };

    // SAE J1263 and J2263, UN GTR No. 15 annex 4 (from memory): road load f0 + f1·v + f2·v² on the effective mass, which counts the
    // rotating wheels. The time between two speeds is M·∫dv/(f0 + f1·v + f2·v²), an arctangent (any table of integrals).
    [Fact]
    public void A_coast_down_takes_the_time_of_the_road_load_equation() => Gen.Select(
            Gen.Double[500, 2500], Gen.Double[0.2, 0.9], Gen.Double[0.008, 0.025], Gen.Double[25, 90], Gen.Double[0, 6], Gen.Double[20, 45], Gen.Double[3, 15])
        .Sample((mass, dragArea, rolling, doublesAt, wheels, fromMps, toMps) =>
        {
            Car car = TestCars.Car(
                spec: s_bare with
                {
                    Mass = Mass.FromKilograms(mass),
                    DragArea = Area.FromSquareMeters(dragArea),
                    RollingCoefficient = rolling,
                    RollingDoublesAt = Speed.FromMetersPerSecond(doublesAt),
                    WheelInertia = MassMomentOfInertia.FromKilogramSquareMeters(wheels),
                },
                tyre: s_tyre);
            var model = new CarModel(car);
            var motion = new Motion { SpeedMps = fromMps };
            var bounds = new MotionBounds
            {
                UntilTimeS = double.PositiveInfinity,
                RiseToMps = double.PositiveInfinity,
                FallToMps = toMps,
                FinishM = double.PositiveInfinity,
            };
            Assert.Equal(MotionEnd.SpeedFallen, MotionIntegrator.Advance(new CoastLaw(model, new RoadLoad(model, 0, 0)), ref motion, bounds));

            double effective = mass + (wheels / (s_tyre.Radius.Meters * s_tyre.Radius.Meters));
            double f0 = mass * Gravity * rolling, f1 = f0 / doublesAt, f2 = 0.5 * car.Conditions.Air.DensityKgPerM3 * dragArea;
            double discriminant = (4 * f0 * f2) - (f1 * f1), root = Math.Sqrt(Math.Abs(discriminant));
            double Primitive(double v)
            {
                double u = (2 * f2 * v) + f1;
                return discriminant > 0 ? 2 / root * Math.Atan(u / root) : Math.Log((u - root) / (u + root)) / root;
            }

            double time = effective * (Primitive(fromMps) - Primitive(toMps));
            Assert.Equal(time, motion.TimeS, 1e-6 * time);
        });

    // Gillespie, Fundamentals of Vehicle Dynamics, ch. 2, traction-limited acceleration with longitudinal load transfer (from memory):
    // rear drive µ·(b/L)/(1 − µ·h/L), front drive µ·(c/L)/(1 + µ·h/L), all wheels µ; in g, resistances left out.
    [Theory]
    [InlineData(DrivenAxle.Rear, 0.52, 0.9)]
    [InlineData(DrivenAxle.Rear, 0.64, 1.5)]
    [InlineData(DrivenAxle.Front, 0.60, 0.9)]
    [InlineData(DrivenAxle.Both, 0.5, 1.1)]
    public void A_standing_start_begins_at_the_traction_limit(DrivenAxle axle, double share, double mu)
    {
        const double Height = 0.42, Wheelbase = 2.4;
        double expected = axle switch
        {
            DrivenAxle.Rear => mu * share / (1 - (mu * Height / Wheelbase)),
            DrivenAxle.Front => mu * share / (1 + (mu * Height / Wheelbase)),
            _ => mu,
        };
        VehicleSpec spec = s_bare with { DragArea = Area.Zero, DrivenAxle = axle, DrivenShare = share, Grip = mu, CentreOfGravityHeight = Length.FromMeters(Height), Wheelbase = Length.FromMeters(Wheelbase) };
        EngineCurve strong = TestCars.Curve((2000, 900), (7000, 900));
        Straight straight = TestCars.Straight("start", 20, 0, 100);
        StraightRun run = VenueRun.For(TestCars.Car(spec: spec, engine: strong, tyre: s_tyre), Venue.Create("v", [straight]).Require()).Straights[0];
        TracePoint point = run.Trace.First(p => p.PositionM > 1);
        Assert.Equal(expected * Gravity, point.SpeedMps * point.SpeedMps / (2 * point.PositionM), 1e-6 * Gravity);
    }

    // A reference run by deSolve's lsodar in R: data/coast_down.R.
    [Fact]
    public void A_coast_down_on_a_slope_against_the_wind_is_that_of_a_general_solver()
    {
        var motion = Coast(TestCars.Spec with { DownforceArea = Area.Zero }, new Conditions(TestCars.SeaLevel), -0.01, 5, 60, double.PositiveInfinity, 20);
        Assert.Equal(44.575603, motion.TimeS, 1e-4);
        Assert.Equal(1528.82880, motion.PositionM, 1e-2);
    }

    // Human Power eJournal, article 10, note on downhill coasting (read): 102 kg, 0.05 rad, Crr 0.005, 1.05 kg/m³, CdA 0.5 m², 60 s from
    // rest. It prints 12.66 m/s; the formula printed with it gives 12.64.
    [Fact]
    public void A_bicycle_coasts_downhill_at_12_66_m_per_s_after_a_minute()
    {
        VehicleSpec bicycle = s_bare with { Mass = Mass.FromKilograms(102), DragArea = Area.FromSquareMeters(0.5), RollingCoefficient = 0.005 };
        var air = AirState.FromReadings(Pressure.FromPascals(1.05 * 287.05287 * 288.15), Temperature.FromDegreesCelsius(15)).Require();
        Assert.InRange(Coast(bicycle, new Conditions(air), -Math.Tan(0.05), 0, 0, 60, -1).SpeedMps, 12.63, 12.67);
    }

    private static Motion Coast(VehicleSpec spec, Conditions day, double grade, double headWindMps, double fromMps, double untilS, double toMps)
    {
        var motion = new Motion { SpeedMps = fromMps };
        var bounds = new MotionBounds { UntilTimeS = untilS, RiseToMps = double.PositiveInfinity, FallToMps = toMps, FinishM = double.PositiveInfinity };
        var model = new CarModel(TestCars.Car(spec: spec, tyre: s_tyre, day: day));
        _ = MotionIntegrator.Advance(new CoastLaw(model, new RoadLoad(model, grade, headWindMps)), ref motion, bounds);
        return motion;
    }

    // A reference run by another program: data/standing_start.py, Runge-Kutta with a step of 20 µs, shifting at 8000 rpm.
    [Theory]
    [InlineData(20, 2.47127, 16.07996)]
    [InlineData(60, 4.33127, 26.58797)]
    [InlineData(100, 5.71308, 31.56080)]
    [InlineData(201, 8.51969, 39.75866)]
    [InlineData(402, 13.02876, 48.51053)]
    public void A_standing_start_through_the_gears_is_that_of_a_fixed_step_program(double distance, double time, double speed)
    {
        VehicleSpec spec = TestCars.Spec with { DownforceArea = Area.Zero, EngineInertia = MassMomentOfInertia.Zero, Grip = 1.1 };
        EngineCurve engine = EngineCurve.Create(
            [
                new TorquePoint(RotationalSpeed.FromRevolutionsPerMinute(3000), Torque.FromNewtonMeters(200)),
                new TorquePoint(RotationalSpeed.FromRevolutionsPerMinute(8000), Torque.FromNewtonMeters(160)),
            ],
            launch: RotationalSpeed.FromRevolutionsPerMinute(4000)).Require();
        Car car = TestCars.Car(spec: spec, engine: engine, tyre: s_tyre);
        Assert.Equal(1.225, car.Conditions.Air.DensityKgPerM3, 1e-6);
        StraightRun run = VenueRun.For(car, Venue.Create("v", [TestCars.Straight("start", distance, 0, 100)]).Require()).Straights[0];
        Assert.Equal(time, run.Time.Seconds, 1e-3);
        Assert.Equal(speed, run.ReachedSpeed.MetersPerSecond, 1e-3);
    }

    // Constant power against quadratic drag, m·v·dv/dx = P/v − k·v²: x = m/(3k)·ln((P − k·v₀³)/(P − k·v³)) (any textbook of mechanics).
    [Fact]
    public void Constant_power_against_quadratic_drag_reaches_the_speed_of_the_closed_form() => Gen.Select(
            Gen.Double[500, 2000], Gen.Double[0.3, 1], Gen.Double[80, 350], Gen.Double[10, 30], Gen.Double[50, 1500])
        .Sample((mass, dragArea, torque, fromMps, length) =>
        {
            VehicleSpec spec = s_bare with { Mass = Mass.FromKilograms(mass), DragArea = Area.FromSquareMeters(dragArea), DrivenAxle = DrivenAxle.Both, Grip = 5 };
            Car car = TestCars.Car(spec: spec, engine: TestCars.Curve((3000, torque), (6000, torque)), tyre: s_tyre);
            StraightRun run = VenueRun.Ideal(car, Venue.Create("v", [TestCars.Straight("s", length, fromMps, 150)]).Require()).Straights[0];
            double power = torque * 6000 * Math.PI / 30, k = 0.5 * car.Conditions.Air.DensityKgPerM3 * dragArea;
            double left = (power - (k * fromMps * fromMps * fromMps)) * Math.Exp(-3 * k * length / mass);
            double expected = Math.Cbrt((power - left) / k);
            Assert.Equal(expected, run.ReachedSpeed.MetersPerSecond, 1e-6 * expected);
        });
}
