using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>
/// One day of a search over pairs of gears. With one drop pair and final drive, each straight is run once for all combinations that have
/// the same gears in its <see cref="ShelfWindow"/>.
/// </summary>
internal sealed class ShelfDay
{
    private readonly Car _car;
    private readonly CarModel _model;
    private readonly GearingGuards _guards;
    private readonly ShelfPairs _pairs;
    private readonly StraightTask[] _tasks;
    private readonly double[] _idealTopMps;
    private readonly double[] _idealMps2;
    private readonly ShelfWindow[] _windows;
    private readonly int[] _gearsWithShift;
    private readonly double[][,] _shiftRpm; // of each gear and its pair, by the pair of the next gear
    private GearSet? _outside;
    private GearLimits? _gears; // of the combination in hand

    internal ShelfDay(Car car, Venue venue, GearingGuards guards, ShelfPairs pairs, GearingStock stock)
    {
        (_car, _guards, _pairs, _model) = (car, guards, pairs, new CarModel(car));
        _tasks = [.. venue.Straights.Select(straight => new StraightTask(straight, _model))];
        IdealGearing ideal = IdealOf(stock);
        StraightFigures[] figures = Array.ConvertAll(_tasks, task => StraightRunner.RunIdeal(_model, ideal, task));
        IdealS = Array.ConvertAll(figures, run => run.TimeS);
        CanFinish = figures.All(run => run.IsFinished);
        _idealTopMps = Array.ConvertAll(figures, run => run.TopMps);
        _idealMps2 = Array.ConvertAll(_tasks, task => new IdealLaw(_model, task.Road, ideal).At(task.StartMps));
        _windows = Array.ConvertAll(_tasks, _ => new ShelfWindow());
        _gearsWithShift = [.. Enumerable.Range(0, pairs.Gears - 1)];
        _shiftRpm = Array.ConvertAll(_gearsWithShift, gear => ShiftsOf(gear));
    }

    /// <summary>Number of straights.</summary>
    internal int Straights => _tasks.Length;

    /// <summary>Time of the ideal on each straight: no combination is faster.</summary>
    internal double[] IdealS { get; }

    /// <summary>Whether the ideal comes to the end of every straight; if not, no combination does.</summary>
    internal bool CanFinish { get; }

    /// <summary>Takes a drop pair and a final drive.</summary>
    internal void Begin(GearSet outside)
    {
        if (_outside == outside)
        {
            return;
        }

        _outside = outside;
        ShelfSpeeds speeds = ShelfSpeeds.Of(_model, _pairs, _shiftRpm, (outside.DropPair?.Ratio ?? 1) * outside.FinalDrive.Ratio);
        for (int i = 0; i < _tasks.Length; i++)
        {
            _windows[i].Begin(_pairs, speeds, _tasks[i], _idealTopMps[i], _idealMps2[i]);
        }
    }

    /// <summary>Takes the next combination in hand.</summary>
    internal void Next() => _gears = null;

    /// <summary>The run of the combination in hand down a straight.</summary>
    internal ShelfLeg Leg(int straight, int[] choice)
    {
        ShelfWindow window = _windows[straight];
        if (window.TryGet(choice, out ShelfLeg known))
        {
            return known;
        }

        _gears ??= new GearLimits(_model, TrainOf(choice), ShiftsOf(choice));
        StraightFigures figures = StraightRunner.Run(_model, _gears, _tasks[straight]);
        var leg = new ShelfLeg(figures.TimeS, figures.TopMps, figures.TopGear, figures.IsFinished);
        window.Add(choice, leg, figures.Downshifts);
        return leg;
    }

    /// <summary>Whether a combination keeps every limit, as <see cref="CandidateRunner.Run"/> judges it.</summary>
    internal bool IsWithinLimits(int[] choice)
    {
        Next();
        (double topMps, int topGear) = (-1, 0);
        for (int i = 0; i < _tasks.Length; i++)
        {
            ShelfLeg leg = Leg(i, choice);
            if (leg.TopMps > topMps + CandidateRunner.SameMps)
            {
                (topMps, topGear) = (leg.TopMps, leg.TopGear);
            }
        }

        Drivetrain train = TrainOf(choice);
        double limiterMps = _model.SpeedMps(_car.Engine.LimiterRpm, train.OverallRatio(_pairs.Gears));
        RotationalSpeed engine = RotationalSpeed.FromRevolutionsPerMinute(_model.EngineRpm(topMps, train.OverallRatio(topGear + 1)));
        return _tasks.Max(task => task.StartMps) <= limiterMps * (1 + 1e-9)
            && !_guards.AtSpeed(train, _car.Tyre, topGear + 1, Speed.FromMetersPerSecond(topMps), engine).Any(caution => caution.IsLimit);
    }

    private Drivetrain TrainOf(int[] choice) => _car.Drivetrain.With(_outside! with { Gears = _pairs.Of(choice) });

    private double[] ShiftsOf(int[] choice) => Array.ConvertAll(_gearsWithShift, gear => _shiftRpm[gear][choice[gear], choice[gear + 1]]);

    private double[,] ShiftsOf(int gear)
    {
        var shifts = new double[_pairs[gear].Count, _pairs[gear + 1].Count];
        for (int i = 0; i < _pairs[gear].Count; i++)
        {
            for (int j = 0; j < _pairs[gear + 1].Count; j++)
            {
                double drop = _pairs[gear + 1][j].Ratio / _pairs[gear][i].Ratio;
                shifts[i, j] = drop < 1 ? _car.Engine.Upshift(gear + 1, drop).At.RevolutionsPerMinute : double.NaN;
            }
        }

        return shifts;
    }

    private IdealGearing IdealOf(GearingStock stock)
    {
        double[] reductions = [.. stock.DropPairs.SelectMany(pair => stock.FinalDrives.Select(final => (pair?.Ratio ?? 1) * final.Ratio))];
        VehicleSpec spec = _car.Vehicle.Spec;
        double Best(double mesh, IEnumerable<ToothPair?> pairs) => pairs.Max(pair => pair is null ? 1 : MeshLoss.Of(pair, mesh));
        double efficiency = spec is { MeshEfficiency: { } mesh, AxleEfficiency: { } axle }
            ? axle * Enumerable.Range(0, _pairs.Gears).Max(gear => Best(mesh, _pairs[gear])) * Best(mesh, stock.DropPairs)
            : spec.DrivelineEfficiency;
        return new IdealGearing(_pairs[_pairs.Gears - 1].Min(pair => pair.Ratio) * reductions.Min(), _pairs[0].Max(pair => pair.Ratio) * reductions.Max(), efficiency);
    }
}
