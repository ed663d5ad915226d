using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Forces between car and road at a steady speed, for drawing and for checking.</summary>
public static class WheelForce
{
    /// <summary>
    /// Force at the driven wheels at full throttle, T·i·η/r, not more than their grip; zero above the limiter in that gear.
    /// </summary>
    /// <param name="car">The car.</param>
    /// <param name="gear">Gear number from 1.</param>
    /// <param name="speed">Road speed.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public static Force InGear(Car car, int gear, Speed speed)
    {
        ArgumentNullException.ThrowIfNull(car);
        var model = new CarModel(car);
        double ratio = car.Drivetrain.OverallRatio(gear);
        bool isAbove = model.EngineRpm(speed.MetersPerSecond, ratio) > car.Engine.LimiterRpm * (1 + 1e-12);
        var law = new DriveLaw(model, new RoadLoad(model, 0, 0), ratio, model.EfficiencyIn(car.Drivetrain, gear));
        return Force.FromNewtons(isAbove ? 0 : law.WheelForceN(speed.MetersPerSecond));
    }

    /// <summary>Air, rolling and slope against the car.</summary>
    /// <param name="car">The car.</param>
    /// <param name="speed">Road speed.</param>
    /// <param name="grade">Rise over distance on the flat, uphill positive.</param>
    /// <param name="headWind">Wind against the car.</param>
    public static Force Resistance(Car car, Speed speed, double grade = 0, Speed headWind = default)
    {
        ArgumentNullException.ThrowIfNull(car);
        var road = new RoadLoad(new CarModel(car), grade, headWind.MetersPerSecond);
        return Force.FromNewtons(road.ResistanceN(speed.MetersPerSecond, out _));
    }

    /// <summary>
    /// Equivalent mass over mass in a gear: 1 + (I_wheels + I_engine·i²·η)/(m·r²), i the overall ratio (Yu, Automobile
    /// Theory; Gillespie, ch. 2).
    /// </summary>
    /// <param name="car">The car.</param>
    /// <param name="gear">Gear number from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public static double MassFactor(Car car, int gear)
    {
        ArgumentNullException.ThrowIfNull(car);
        var model = new CarModel(car);
        double ratio = car.Drivetrain.OverallRatio(gear);
        double rotating = model.WheelInertiaKgM2 + (model.EngineInertiaKgM2 * ratio * ratio * model.EfficiencyIn(car.Drivetrain, gear));
        return 1 + (rotating / (model.MassKg * model.StaticRadiusM * model.StaticRadiusM));
    }
}
