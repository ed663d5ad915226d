using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>Runs candidates over a venue on one day; the figures of the day are worked out once for all of them.</summary>
internal sealed class CandidateRunner
{
    private const double SameMps = 1e-5; // on the limiter on two straights: it is the first that counts

    private readonly Car _car;
    private readonly Venue _venue;
    private readonly CarModel _model;
    private readonly StraightTask[] _tasks;
    private readonly double[] _shiftRpm;
    private readonly double[] _idealS;
    private readonly GearingGuards _guards;

    internal CandidateRunner(Car car, Venue venue, GearingStock stock, GearingGuards guards)
    {
        _car = car;
        _venue = venue;
        _guards = guards;
        _model = new CarModel(car);
        _tasks = venue.Straights.Select(straight => new StraightTask(straight, _model)).ToArray();
        _shiftRpm = GearLimits.ShiftRpm(car.Drivetrain, car.Engine);
        var gearings = IdealGearing.Of(_model, stock.DropPairs.SelectMany(pair => stock.FinalDrives, car.Drivetrain.With));
        StraightFigures[] ideal = Array.ConvertAll(_tasks, task => StraightRunner.RunIdeal(_model, gearings, task));
        _idealS = Array.ConvertAll(ideal, figures => figures.TimeS);
        IdealTime = Duration.FromSeconds(_idealS.Sum());
        int stuck = Array.FindIndex(ideal, figures => !figures.IsFinished);
        IdealFault = stuck < 0 ? null : StraightRun.FaultOf(venue.Straights[stuck], ideal[stuck]);
    }

    internal Duration IdealTime { get; }

    /// <summary>Why not even the ideal comes to the end; null when it does.</summary>
    internal GearingFault? IdealFault { get; }

    internal GearingCandidate Run(ToothPair? dropPair, FinalDrive finalDrive)
    {
        Drivetrain train = _car.Drivetrain.With(dropPair, finalDrive);
        var gears = new GearLimits(_model, train, _shiftRpm);
        double timeS = 0, limiterS = 0, topMps = -1;
        int topGear = 0, topStraight = 0, shifts = 0;
        bool isFinished = true;
        List<GearingFault>? faults = null;
        var falling = new List<string>();
        for (int i = 0; i < _tasks.Length; i++)
        {
            StraightFigures figures = StraightRunner.Run(_model, gears, _tasks[i]);
            timeS += figures.TimeS;
            limiterS += figures.LimiterS;
            shifts += figures.Upshifts + figures.Downshifts;
            isFinished &= figures.IsFinished;
            if (figures.Fit != CornerFit.InBand)
            {
                falling.Add(_venue.Straights[i].Name);
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
        return new GearingCandidate
        {
            DropPair = dropPair,
            FinalDrive = finalDrive,
            IsFinished = isFinished,
            StraightsTime = Duration.FromSeconds(timeS),
            LossToIdeal = Duration.FromSeconds(isFinished ? Math.Max(0, timeS - IdealTime.Seconds) : 0),
            TopSpeed = top,
            TopSpeedStraight = _venue.Straights[topStraight].Name,
            TopSpeedGear = topGear + 1,
            EngineSpeedAtTop = RotationalSpeed.FromRevolutionsPerMinute(_model.EngineRpm(topMps, gears.OverallRatio[topGear])),
            OnLimiter = Duration.FromSeconds(limiterS),
            ShiftsPerLap = shifts,
            CornersBetweenGears = falling,
            Cautions = _guards.Check(_car.With(train), top, topGear + 1, topMps >= gears.LimiterMps[topGear] * (1 - 1e-9)),
            Faults = faults ?? (IReadOnlyList<GearingFault>)[],
        };
    }
}
