using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Road speed and engine speed in each gear. Immutable.</summary>
/// <remarks>
/// Road speed = engine speed / overall ratio × rolling circumference × (1 − slip). Of a car the slip of each gear goes with its force;
/// without one it is the tyre's.
/// </remarks>
public sealed class SpeedTable
{
    private readonly Drivetrain _drivetrain;
    private readonly RollingTyre _tyre;
    private readonly double[] _slip; // in each gear

    private SpeedTable(Drivetrain drivetrain, RollingTyre tyre, RotationalSpeed limit, Func<double, double> slipIn)
    {
        _slip = Enumerable.Range(1, drivetrain.Gears.Count).Select(gear => slipIn(drivetrain.OverallRatio(gear))).ToArray();
        _drivetrain = drivetrain;
        _tyre = tyre;
        Limit = limit;
        Rows = Enumerable.Range(1, drivetrain.Gears.Count).Select(Row).ToArray();
    }

    /// <summary>The engine's limit that the table is made for.</summary>
    public RotationalSpeed Limit { get; }

    /// <summary>One row for each gear, first gear first.</summary>
    public IReadOnlyList<SpeedTableRow> Rows { get; }

    /// <summary>Makes the table.</summary>
    /// <param name="drivetrain">Gears, drop pair, final drive.</param>
    /// <param name="tyre">The driven tyre.</param>
    /// <param name="limit">The engine's limit, 500 to 30 000 rpm.</param>
    public static Outcome<SpeedTable> For(Drivetrain drivetrain, RollingTyre tyre, RotationalSpeed limit)
    {
        ArgumentNullException.ThrowIfNull(drivetrain);
        ArgumentNullException.ThrowIfNull(tyre);
        var faults = new FaultList();
        faults.Range("limiter", limit.RevolutionsPerMinute, 500, 30_000, "rpm");
        return faults.Finish(() => new SpeedTable(drivetrain, tyre, limit, _ => tyre.State.Slip));
    }

    /// <summary>Makes the table of a car up to its limiter.</summary>
    /// <param name="car">The car.</param>
    public static SpeedTable For(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return new SpeedTable(car.Drivetrain, car.Tyre, car.Engine.Limiter, new CarModel(car).SlipIn);
    }

    /// <summary>Road speed at an engine speed.</summary>
    /// <param name="gear">Gear number from 1.</param>
    /// <param name="engine">Engine speed, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public Speed SpeedAt(int gear, RotationalSpeed engine) =>
        Speed.FromMetersPerSecond(_tyre.SpeedMps(engine.RevolutionsPerSecond / _drivetrain.OverallRatio(gear), _slip[gear - 1]));

    /// <summary>Engine speed at a road speed.</summary>
    /// <param name="gear">Gear number from 1.</param>
    /// <param name="speed">Road speed, not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public RotationalSpeed EngineSpeedAt(int gear, Speed speed) =>
        RotationalSpeed.FromRevolutionsPerSecond(
            _tyre.WheelTurnsPerSecond(speed.MetersPerSecond, _slip[gear - 1]) * _drivetrain.OverallRatio(gear));

    /// <summary>Engine speed in the next gear at the road speed at which the upshift is made.</summary>
    /// <param name="gear">The gear that is left, from 1; not top gear.</param>
    /// <param name="engine">Engine speed at the shift.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear, or none above it.</exception>
    public RotationalSpeed EngineSpeedAfterUpshift(int gear, RotationalSpeed engine) =>
        engine * (_drivetrain.OverallRatio(gear + 1) / _drivetrain.OverallRatio(gear));

    private SpeedTableRow Row(int gear)
    {
        bool isTop = gear == _drivetrain.Gears.Count;
        return new SpeedTableRow(
            gear,
            _drivetrain.Gears[gear - 1].Name,
            _drivetrain.OverallRatio(gear),
            SpeedAt(gear, RotationalSpeed.FromRevolutionsPerMinute(1000)),
            SpeedAt(gear, Limit),
            isTop ? null : _drivetrain.OverallRatio(gear) / _drivetrain.OverallRatio(gear + 1),
            isTop ? null : EngineSpeedAfterUpshift(gear, Limit));
    }
}
