using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>What stops a car from going faster in a gear.</summary>
public enum TopSpeedStop
{
    /// <summary>The engine's limiter; the gear could pull more.</summary>
    Limiter,

    /// <summary>Air, rolling, slope and wind take all that the wheels give.</summary>
    Drag,

    /// <summary>The gear cannot hold any speed within its range.</summary>
    CannotHold,
}

/// <summary>The greatest steady speed in one gear.</summary>
/// <param name="Gear">Gear number from 1.</param>
/// <param name="Speed">The greatest speed that the gear can hold; zero when it can hold none.</param>
/// <param name="EngineSpeed">Engine speed there.</param>
/// <param name="Stop">What stops the car.</param>
public sealed record GearTopSpeed(int Gear, Speed Speed, RotationalSpeed EngineSpeed, TopSpeedStop Stop);

/// <summary>The greatest steady speed of a car: wheel force against air, rolling, slope and wind. Immutable.</summary>
/// <param name="Gears">One figure for each gear, first gear first.</param>
public sealed record TopSpeed(IReadOnlyList<GearTopSpeed> Gears)
{
    private const int Steps = 2000;

    /// <summary>The gear that holds the greatest speed; the higher gear of two equals.</summary>
    public GearTopSpeed Best => Gears.Aggregate((best, next) => next.Speed >= best.Speed ? next : best);

    /// <summary>
    /// Works out the greatest speed that each gear can hold. Where force and resistance cross more than once it is the
    /// fastest crossing, which a car may not pass the slower ones to reach.
    /// </summary>
    /// <param name="car">The car.</param>
    /// <param name="grade">Rise over distance on the flat, uphill positive, −0.4 to 0.4.</param>
    /// <param name="headWind">Wind against the car; negative for a tail wind, −40 to 40 m/s.</param>
    public static Outcome<TopSpeed> For(Car car, double grade = 0, Speed headWind = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        var faults = new FaultList();
        faults.Range("grade", grade, -0.4, 0.4);
        faults.Range("head_wind", headWind.MetersPerSecond, -40, 40, "m/s");
        return faults.Finish(() =>
        {
            var model = new CarModel(car);
            var road = new RoadLoad(model, grade, headWind.MetersPerSecond);
            return new TopSpeed(Enumerable.Range(1, car.Drivetrain.Gears.Count).Select(gear => InGear(model, road, gear)).ToArray());
        });
    }

    private static GearTopSpeed InGear(CarModel model, RoadLoad road, int gear)
    {
        double ratio = model.Car.Drivetrain.OverallRatio(gear);
        var law = new DriveLaw(model, road, ratio, model.EfficiencyIn(model.Car.Drivetrain, gear));
        double limitMps = model.SpeedMps(model.Car.Engine.LimiterRpm, ratio);
        double lowMps = model.SpeedMps(model.Spline.FirstRpm, ratio);
        double Surplus(double speedMps) => law.WheelForceN(speedMps) - road.ResistanceN(speedMps, out _);
        if (Surplus(limitMps) >= 0)
        {
            return Make(model, gear, ratio, limitMps, TopSpeedStop.Limiter);
        }

        double step = (limitMps - lowMps) / Steps;
        for (int i = Steps - 1; i >= 0; i--)
        {
            double left = lowMps + (i * step);
            if (Surplus(left) > 0)
            {
                return Make(model, gear, ratio, ScalarSearch.Zero(Surplus, left, left + step), TopSpeedStop.Drag);
            }
        }

        return Make(model, gear, ratio, 0, TopSpeedStop.CannotHold);
    }

    private static GearTopSpeed Make(CarModel model, int gear, double ratio, double speedMps, TopSpeedStop stop) => new(
        gear,
        Speed.FromMetersPerSecond(speedMps),
        RotationalSpeed.FromRevolutionsPerMinute(model.EngineRpm(speedMps, ratio)),
        stop);
}
