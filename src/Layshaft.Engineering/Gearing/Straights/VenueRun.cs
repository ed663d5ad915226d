using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One car down every straight of a venue. Immutable.</summary>
/// <remarks>
/// Full throttle from corner exit to braking point, shifts as <see cref="UpshiftPlan"/> has them with their time without
/// drive, grip with the load that passes to the driven wheels, rotating parts by gear, slope and wind. Integrated by an
/// embedded Runge–Kutta pair with every shift and braking point located, so the answer does not hang on a step size.
/// </remarks>
public sealed class VenueRun
{
    private VenueRun(Venue venue, IReadOnlyList<StraightRun> straights, IReadOnlyList<CornerGear> corners)
    {
        Venue = venue;
        Straights = straights;
        Corners = corners;
    }

    /// <summary>The venue.</summary>
    public Venue Venue { get; }

    /// <summary>One run for each straight, in order.</summary>
    public IReadOnlyList<StraightRun> Straights { get; }

    /// <summary>The gear for the corner before each straight, in the same order; empty for the ideal.</summary>
    public IReadOnlyList<CornerGear> Corners { get; }

    /// <summary>Time on the straights of one lap, shifts in corners included; the rest of a corner is the same for every gearing.</summary>
    public Duration StraightsTime => Duration.FromSeconds(Straights.Sum(run => run.Time.Seconds));

    /// <summary>Everything that did not come out as asked.</summary>
    public IReadOnlyList<GearingFault> Faults =>
        Straights.Select(run => run.Fault).OfType<GearingFault>().ToArray();

    /// <summary>Time under power in each gear on the straights of one lap, first gear first; shifts and braking belong to none.</summary>
    /// <param name="gears">Number of gears.</param>
    public IReadOnlyList<Duration> TimeInGear(int gears)
    {
        double[] seconds = new double[gears];
        foreach (StraightRun run in Straights)
        {
            for (int i = 1; i < run.Trace.Count; i++)
            {
                if (run.Trace[i].Gear > 0)
                {
                    seconds[run.Trace[i].Gear - 1] += run.Trace[i].TimeS - run.Trace[i - 1].TimeS;
                }
            }
        }

        return Array.ConvertAll(seconds, time => Duration.FromSeconds(time));
    }

    /// <summary>Runs the car as it is geared.</summary>
    /// <param name="car">The car.</param>
    /// <param name="venue">The venue.</param>
    public static VenueRun For(Car car, Venue venue)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(venue);
        var model = new CarModel(car);
        var gears = new GearLimits(model, car.Drivetrain, GearLimits.ShiftRpm(car.Drivetrain, car.Engine));
        var runs = new List<StraightRun>();
        var corners = new List<CornerGear>();
        foreach (Straight straight in venue.Straights)
        {
            var trace = new MotionTrace();
            StraightFigures figures = StraightRunner.Run(model, gears, new StraightTask(straight, model), trace);
            runs.Add(new StraightRun(straight, figures, trace, model, gears));
            corners.Add(CornerGear.For(model, gears, straight, figures));
        }

        return new VenueRun(venue, runs, corners);
    }

    /// <summary>Runs the same engine with an infinitely variable transmission: the limit that no gearing can pass.</summary>
    /// <param name="car">The car.</param>
    /// <param name="venue">The venue.</param>
    public static VenueRun Ideal(Car car, Venue venue)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(venue);
        var model = new CarModel(car);
        var ideal = IdealGearing.Of(model, [car.Drivetrain]);
        var runs = new List<StraightRun>();
        foreach (Straight straight in venue.Straights)
        {
            var trace = new MotionTrace();
            StraightFigures figures = StraightRunner.RunIdeal(
                model, ideal, new StraightTask(straight, model), trace);
            runs.Add(new StraightRun(straight, figures, trace, model, null));
        }

        return new VenueRun(venue, runs, []);
    }
}
