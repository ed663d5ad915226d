using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Runs candidates over a venue on one day; the figures of the day are worked out once for all of them.</summary>
internal sealed class CandidateRunner
{
    internal const double SameMps = 1e-5; // on the limiter on two straights: it is the first that counts

    private readonly Car _car;
    private readonly Venue _venue;
    private readonly CarModel _model;
    private readonly StraightTask[] _tasks;
    private readonly double[] _shiftRpm;
    private readonly GearingGuards _guards;
    private readonly Lazy<(Duration Time, GearingFault? Fault)> _ideal;

    internal CandidateRunner(Car car, Venue venue, GearingGuards guards)
    {
        _car = car;
        _venue = venue;
        _guards = guards;
        _model = new CarModel(car);
        _tasks = venue.Straights.Select(straight => new StraightTask(straight, _model)).ToArray();
        _shiftRpm = GearLimits.ShiftRpm(car.Drivetrain, car.Engine);
        _ideal = new(RunIdeal);
    }

    /// <summary>The combinations that the ideal is held against; empty for a runner that is not asked for it.</summary>
    internal GearSet[] IdealAmong { get; init; } = [];

    /// <summary>The ideal's time, and why not even the ideal comes to the end; null when it does.</summary>
    internal (Duration Time, GearingFault? Fault) Ideal => _ideal.Value;

    /// <summary>Seconds on each straight; null if the car does not come to the end of them.</summary>
    internal double[]? SecondsOf(GearSet set)
    {
        Drivetrain train = _car.Drivetrain.With(set);
        var gears = new GearLimits(_model, train, ShiftRpm(set, train));
        var seconds = new double[_tasks.Length];
        for (int i = 0; i < _tasks.Length; i++)
        {
            StraightFigures figures = StraightRunner.Run(_model, gears, _tasks[i]);
            seconds[i] = figures.TimeS;
            if (!figures.IsFinished)
            {
                return null;
            }
        }

        return seconds;
    }

    internal GearingCandidate Run(GearSet set)
    {
        Drivetrain train = _car.Drivetrain.With(set);
        var gears = new GearLimits(_model, train, ShiftRpm(set, train));
        double timeS = 0, limiterS = 0, topMps = -1;
        int topGear = 0, topStraight = 0, shifts = 0;
        bool isFinished = true;
        List<GearingFault>? faults = null;
        var falling = new List<Straight>();
        for (int i = 0; i < _tasks.Length; i++)
        {
            StraightFigures figures = StraightRunner.Run(_model, gears, _tasks[i]);
            timeS += figures.TimeS;
            limiterS += figures.LimiterS;
            shifts += figures.Upshifts + figures.Downshifts;
            isFinished &= figures.IsFinished;
            if (figures.Fit != CornerFit.InBand)
            {
                falling.Add(_venue.Straights[i]);
            }

            if (figures.TopMps > topMps + SameMps)
            {
                (topMps, topGear, topStraight) = (figures.TopMps, figures.TopGear, i);
            }

            if (StraightRun.FaultOf(_venue.Straights[i], figures) is { } fault)
            {
                (faults ??= []).Add(fault);
            }
        }

        Speed top = Speed.FromMetersPerSecond(topMps);
        IReadOnlyList<GearingCaution> cautions = _guards.Check(_car.With(train), top, topGear + 1, topMps >= gears.LimiterMps[topGear] * (1 - 1e-9));
        return new GearingCandidate
        {
            Set = set,
            IsFinished = isFinished,
            StraightsTime = Duration.FromSeconds(timeS),
            LossToIdeal = Duration.FromSeconds(isFinished && IdealAmong.Length > 0 ? Math.Max(0, timeS - Ideal.Time.Seconds) : 0),
            TopSpeed = top,
            TopSpeedStraight = _venue.Straights[topStraight].Name,
            TopSpeedGear = topGear + 1,
            EngineSpeedAtTop = RotationalSpeed.FromRevolutionsPerMinute(_model.EngineRpm(topMps, gears.OverallRatio[topGear])),
            OnLimiter = Duration.FromSeconds(limiterS),
            ShiftsPerLap = shifts,
            CornersBetweenGears = falling,
            Cautions = OverRev(gears) is { } overRev ? [.. cautions, overRev] : cautions,
            Faults = faults ?? (IReadOnlyList<GearingFault>)[],
        };
    }

    private double[] ShiftRpm(GearSet set, Drivetrain train) => set.Gears is null ? _shiftRpm : GearLimits.ShiftRpm(train, _car.Engine);

    private (Duration Time, GearingFault? Fault) RunIdeal()
    {
        var gearings = IdealGearing.Of(_model, IdealAmong.Select(_car.Drivetrain.With));
        StraightFigures[] ideal = Array.ConvertAll(_tasks, task => StraightRunner.RunIdeal(_model, gearings, task));
        int stuck = Array.FindIndex(ideal, figures => !figures.IsFinished);
        return (Duration.FromSeconds(ideal.Sum(figures => figures.TimeS)), stuck < 0 ? null : StraightRun.FaultOf(_venue.Straights[stuck], ideal[stuck]));
    }

    // Top gear turns the engine slowest, so a corner left faster than its limiter allows over-revs the engine in every gear.
    private GearingCaution? OverRev(GearLimits gears)
    {
        double fastestMps = _tasks.Max(task => task.StartMps);
        return fastestMps <= gears.LimiterMps[^1] * (1 + 1e-9) ? null : new GearingCaution(
            GearingCautionKind.CornerOverRev,
            RotationalSpeed.FromRevolutionsPerMinute(_model.EngineRpm(fastestMps, gears.OverallRatio[^1])),
            _car.Engine.Limiter);
    }
}
