using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Everything that decides how the car goes down a straight. Immutable.</summary>
public sealed class Car
{
    private Car(Vehicle vehicle, EngineCurve engine, Drivetrain drivetrain, RollingTyre tyre, Conditions conditions, Speed addedHeadWind)
    {
        Vehicle = vehicle;
        Engine = engine;
        Drivetrain = drivetrain;
        Tyre = tyre;
        Conditions = conditions;
        AddedHeadWind = addedHeadWind;
    }

    /// <summary>The car's body, axles and shift time.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>The torque curve.</summary>
    public EngineCurve Engine { get; }

    /// <summary>Gears, drop pair, final drive.</summary>
    public Drivetrain Drivetrain { get; }

    /// <summary>The driven tyre.</summary>
    public RollingTyre Tyre { get; }

    /// <summary>The day.</summary>
    public Conditions Conditions { get; }

    /// <summary>Wind against the car on every straight, on top of the day's wind.</summary>
    public Speed AddedHeadWind { get; }

    /// <summary>Engine speed in a gear at a road speed under full drive: growth, and the slip that goes with the gear's force.</summary>
    /// <param name="gear">Gear number from 1.</param>
    /// <param name="speed">Road speed.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public RotationalSpeed EngineSpeedAt(int gear, Speed speed) => RotationalSpeed.FromRevolutionsPerMinute(
        new CarModel(this).EngineRpm(speed.MetersPerSecond, Drivetrain.OverallRatio(gear)));

    /// <summary>Joins the parts, each checked by itself, and checks the day.</summary>
    /// <param name="vehicle">The car's body, axles and shift time.</param>
    /// <param name="engine">The torque curve.</param>
    /// <param name="drivetrain">Gears, drop pair, final drive.</param>
    /// <param name="tyre">The driven tyre.</param>
    /// <param name="conditions">The day.</param>
    /// <param name="addedHeadWind">Wind against the car on every straight, on top of the day's.</param>
    public static Outcome<Car> Create(
        Vehicle vehicle,
        EngineCurve engine,
        Drivetrain drivetrain,
        RollingTyre tyre,
        Conditions conditions,
        Speed addedHeadWind = default)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(engine);
        ArgumentNullException.ThrowIfNull(drivetrain);
        ArgumentNullException.ThrowIfNull(tyre);
        ArgumentNullException.ThrowIfNull(conditions);
        var faults = new FaultList();
        faults.Range("drag_factor", conditions.DragFactor, 0.2, 1.5);
        faults.Range("wind", (conditions.Wind?.Speed ?? default).MetersPerSecond, -40, 40, "m/s");
        faults.Range("head_wind", addedHeadWind.MetersPerSecond, -40, 40, "m/s");
        return faults.Finish(() => new Car(vehicle, engine, drivetrain, tyre, conditions, addedHeadWind));
    }

    /// <summary>The same car with another drivetrain.</summary>
    /// <param name="drivetrain">Gears, drop pair, final drive.</param>
    public Car With(Drivetrain drivetrain)
    {
        ArgumentNullException.ThrowIfNull(drivetrain);
        return new Car(Vehicle, Engine, drivetrain, Tyre, Conditions, AddedHeadWind);
    }
}
