using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One way in which the day, the car or its driver may differ from what was planned for.</summary>
/// <param name="Key">Its short name in the data files and for the strings of a page, such as <c>headwind</c>; never printed itself.</param>
/// <param name="DragFactor">By what the air drag is multiplied (a tow is below 1).</param>
/// <param name="HeadWind">Wind added against the car on every straight; negative for a tailwind.</param>
/// <param name="Warmer">How much warmer the air is; it thins the air and, through the curve's standard, the engine's torque.</param>
/// <param name="Wear">Tread worn off the driven tyres, as depth.</param>
public sealed record ConditionChange(
    string Key,
    double DragFactor = 1,
    Speed HeadWind = default,
    TemperatureDelta Warmer = default,
    Length Wear = default)
{
    /// <summary>By what the torque curve is multiplied.</summary>
    public double TorqueFactor { get; init; } = 1;

    /// <summary>By what the mass is multiplied.</summary>
    public double MassFactor { get; init; } = 1;

    /// <summary>By what the tyre's rolling circumference is multiplied.</summary>
    public double CircumferenceFactor { get; init; } = 1;

    /// <summary>By what the grip of the driven tyres is multiplied.</summary>
    public double GripFactor { get; init; } = 1;

    /// <summary>By what the shift time is multiplied.</summary>
    public double ShiftTimeFactor { get; init; } = 1;

    /// <summary>By what every corner's exit, entry and lowest speed is multiplied.</summary>
    public double CornerSpeedFactor { get; init; } = 1;

    /// <summary>
    /// What a meeting brings: a tow (three quarters of the drag), 5 m/s of wind either way, a day 15 K warmer, tyres worn by 3 mm,
    /// corners 5 % slower or faster, shifts half as long again, a fifth less grip. Common practice, no source.
    /// </summary>
    public static IReadOnlyList<ConditionChange> Usual { get; } =
    [
        new("tow", DragFactor: 0.75),
        new("headwind", HeadWind: Speed.FromMetersPerSecond(5)),
        new("tailwind", HeadWind: Speed.FromMetersPerSecond(-5)),
        new("warm_day", Warmer: TemperatureDelta.FromKelvins(15)),
        new("worn_tyres", Wear: Length.FromMillimeters(3)),
        new("slower_corners") { CornerSpeedFactor = 0.95 },
        new("faster_corners") { CornerSpeedFactor = 1.05 },
        new("slower_shifts") { ShiftTimeFactor = 1.5 },
        new("less_grip") { GripFactor = 0.8 },
    ];

    /// <summary>The car on the changed day.</summary>
    /// <param name="car">The car on the planned day.</param>
    /// <returns>The car, or a fault when the changed day is outside what can be worked out.</returns>
    public Outcome<Car> Apply(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        var faults = new FaultList();
        Outcome<AirState> air = car.Conditions.Air.Warmer(Warmer);
        Outcome<RollingTyre> tyre = TyreOf(car);
        VehicleSpec spec = car.Vehicle.Spec;
        Outcome<Vehicle> vehicle = Vehicle.Create(spec with
        {
            Mass = spec.Mass * MassFactor,
            Grip = spec.Grip * GripFactor,
            ShiftTime = spec.ShiftTime * ShiftTimeFactor,
        });
        Outcome<EngineCurve> engine = EngineOf(car);
        faults.AddRange([.. air.Faults, .. tyre.Faults, .. vehicle.Faults, .. engine.Faults]);
        return faults.IsEmpty
            ? Car.Create(
                vehicle.Value!,
                engine.Value!,
                car.Drivetrain,
                tyre.Value!,
                car.Conditions with { Air = air.Value!, DragFactor = car.Conditions.DragFactor * DragFactor },
                car.AddedHeadWind + HeadWind)
            : faults.Finish<Car>(() => null!);
    }

    /// <summary>The venue on the changed day.</summary>
    /// <param name="venue">The venue as planned.</param>
    /// <returns>The venue, or a fault such as a straight that is too short to brake on.</returns>
    public Outcome<Venue> Apply(Venue venue)
    {
        ArgumentNullException.ThrowIfNull(venue);
        return Is(CornerSpeedFactor)
            ? Venue.Create(venue.Name, [.. venue.Straights.Select(straight => straight with
            {
                StartSpeed = straight.StartSpeed * CornerSpeedFactor,
                EndSpeed = straight.EndSpeed * CornerSpeedFactor,
                CornerMinimum = straight.CornerMinimum is { } lowest ? lowest * CornerSpeedFactor : null,
            })])
            : new FaultList().Finish(() => venue);
    }

    private static bool Is(double factor) => Math.Abs(factor - 1) > 1e-12;

    private Outcome<RollingTyre> TyreOf(Car car)
    {
        RollingState state = car.Tyre.State with { Wear = car.Tyre.State.Wear + Wear };
        return Is(CircumferenceFactor)
            ? RollingTyre.FromMeasured(car.Tyre.NewCircumference * CircumferenceFactor, state, car.Tyre.Size)
            : car.Tyre.With(state);
    }

    // A curve keeps the shifts that it worked out, so it is made again only if its torque differs.
    private Outcome<EngineCurve> EngineOf(Car car) => Is(TorqueFactor)
        ? EngineCurve.Create([.. car.Engine.Points.Select(point => point with { Torque = point.Torque * TorqueFactor })], car.Engine.Limiter, car.Engine.UsableFrom, car.Engine.LaunchAt)
        : new FaultList().Finish(() => car.Engine);
}
