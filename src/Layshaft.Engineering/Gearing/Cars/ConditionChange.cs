using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One way in which the day may differ from what was planned for.</summary>
/// <param name="Name">What to call it.</param>
/// <param name="DragFactor">By what the air drag is multiplied (a tow is below 1).</param>
/// <param name="HeadWind">Wind added against the car on every straight.</param>
/// <param name="Warmer">How much warmer the air is; it thins the air and, through the curve's standard, the engine's torque.</param>
/// <param name="Wear">Tread worn off the driven tyres, as depth.</param>
public sealed record ConditionChange(
    string Name,
    double DragFactor = 1,
    Speed HeadWind = default,
    TemperatureDelta Warmer = default,
    Length Wear = default)
{
    /// <summary>
    /// A tow (three quarters of the drag), a head wind of 5 m/s, a day 15 K warmer, tyres worn by 3 mm. Layshaft's own choice of
    /// sizes, each a plain amount of what a meeting brings; a shop may give others.
    /// </summary>
    public static IReadOnlyList<ConditionChange> Usual { get; } =
    [
        new("tow", DragFactor: 0.75),
        new("head wind", HeadWind: Speed.FromMetersPerSecond(5)),
        new("warm day", Warmer: TemperatureDelta.FromKelvins(15)),
        new("worn tyres", Wear: Length.FromMillimeters(3)),
    ];

    /// <summary>The car on the changed day.</summary>
    /// <param name="car">The car on the planned day.</param>
    /// <returns>The car, or a fault when the changed day is outside what can be worked out.</returns>
    public Outcome<Car> Apply(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var faults = new FaultList();
        Outcome<AirState> air = car.Conditions.Air.Warmer(Warmer);
        Outcome<RollingTyre> tyre = car.Tyre.With(car.Tyre.State with { Wear = car.Tyre.State.Wear + Wear });
        faults.AddRange(air.Faults);
        faults.AddRange(tyre.Faults);
        return faults.IsEmpty
            ? Car.Create(
                car.Vehicle,
                car.Engine,
                car.Drivetrain,
                tyre.Value!,
                car.Conditions with { Air = air.Value!, DragFactor = car.Conditions.DragFactor * DragFactor },
                car.AddedHeadWind + HeadWind)
            : faults.Finish<Car>(() => null!);
    }
}
