using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One run down one straight, with its trace. Immutable.</summary>
public sealed class StraightRun
{
    internal StraightRun(Straight straight, in StraightFigures figures, MotionTrace trace, CarModel car, GearLimits? gears)
    {
        Straight = straight;
        Time = Duration.FromSeconds(figures.TimeS);
        TopSpeed = Speed.FromMetersPerSecond(figures.TopMps);
        TopSpeedAt = Length.FromMeters(figures.TopAtM);
        TopSpeedGear = figures.TopGear + 1;
        EngineSpeedAtTop = gears is null
            ? null
            : RotationalSpeed.FromRevolutionsPerMinute(car.EngineRpm(figures.TopMps, gears.OverallRatio[figures.TopGear]));
        OnLimiter = Duration.FromSeconds(figures.LimiterS);
        BrakingPoint = Length.FromMeters(figures.BrakingAtM);
        BrakingSpeed = Speed.FromMetersPerSecond(figures.BrakingMps);
        BrakingGear = figures.LastGear + 1;
        ReachedSpeed = Speed.FromMetersPerSecond(figures.ReachedMps);
        Trace = trace.Points.ToArray();
        Shifts = trace.Shifts.ToArray();
        Fault = FaultOf(straight, figures);
    }

    /// <summary>The straight.</summary>
    public Straight Straight { get; }

    /// <summary>Time from corner exit to corner entry.</summary>
    public Duration Time { get; }

    /// <summary>Greatest speed.</summary>
    public Speed TopSpeed { get; }

    /// <summary>Distance from the corner exit at which the greatest speed is reached.</summary>
    public Length TopSpeedAt { get; }

    /// <summary>The gear at the greatest speed, from 1; 0 for the ideal.</summary>
    public int TopSpeedGear { get; }

    /// <summary>Engine speed at the greatest speed; null for the ideal.</summary>
    public RotationalSpeed? EngineSpeedAtTop { get; }

    /// <summary>Time on the limiter.</summary>
    public Duration OnLimiter { get; }

    /// <summary>Distance from the corner exit at which the brakes come on; the straight's length when they need not.</summary>
    public Length BrakingPoint { get; }

    /// <summary>Speed when the brakes come on.</summary>
    public Speed BrakingSpeed { get; }

    /// <summary>The gear in which the brakes come on, from 1.</summary>
    public int BrakingGear { get; }

    /// <summary>Speed at the end of the straight.</summary>
    public Speed ReachedSpeed { get; }

    /// <summary>The shifts made, in order.</summary>
    public IReadOnlyList<ShiftMade> Shifts { get; }

    /// <summary>Points of the run in order of time, close enough to draw.</summary>
    public IReadOnlyList<TracePoint> Trace { get; }

    /// <summary>What did not come out as asked (such as a corner too fast to reach); null when all did.</summary>
    public GearingFault? Fault { get; }

    internal static GearingFault? FaultOf(Straight straight, in StraightFigures figures) => figures.Fault switch
    {
        null => null,
        GearingFaultKind.StartAboveTopGear => new GearingFault(
            GearingFaultKind.StartAboveTopGear,
            straight.Name,
            straight.StartSpeed.MetersPerSecond,
            High: figures.FaultFigure,
            Unit: "m/s"),
        GearingFaultKind.CornerUnreachable => new GearingFault(
            GearingFaultKind.CornerUnreachable,
            straight.Name,
            figures.FaultFigure,
            straight.EndSpeed.MetersPerSecond,
            Unit: "m/s"),
        { } kind => new GearingFault(
            kind, straight.Name, figures.FaultFigure, Unit: kind == GearingFaultKind.CannotPull ? "m" : "s"),
    };
}
