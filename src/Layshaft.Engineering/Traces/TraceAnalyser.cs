using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>
/// Works out what a trace shows, row by row: add every row, then finish. Memory does not grow with the rows, only with the shifts,
/// laps and corners in them. Not safe to share between threads.
/// </summary>
/// <remarks>
/// The gears are fitted to the first minutes of driving, at most 300 000 rows, which are kept for that long and then followed.
/// Rows are taken as readings at their time; a logger's filter or delay between channels is not corrected.
/// </remarks>
public sealed class TraceAnalyser
{
    private const int RowsToFit = 60_000;
    private const int MostRowsKept = 300_000;
    private const double DrivingMps = 5;
    private const double DrivingRpm = 1000;
    private const double EngineRunningRpm = 400;
    private const double MovingMps = 1;
    private const double GapS = 1;
    private const double BridgedS = 10;
    private const double SameTimeS = 1e-9;

    private readonly TraceQuestion _question;
    private readonly RowThinner _thinner = new();
    private readonly RatioHistogram _histogram = new();
    private readonly LapCounter _laps;
    private readonly CornerFinder _corners = new();
    private readonly LapLine _line = new();
    private readonly LimiterWatch _limiter;
    private readonly SlipTally _slip;
    private List<TraceSample>? _kept = [];
    private GearFit? _fit;
    private GearTracker? _gears;
    private TraceSample _rowBefore = new(double.NaN, 0, 0);
    private TraceSample _before = new(double.NaN, 0, 0);
    private int _drivingKept;
    private double _odometerM;
    private double _bridgedM;
    private double _engineS;
    private double _movingS;
    private double _recordedS;
    private double _gapS;
    private double _firstS = double.NaN;
    private (double Mps, TracePlace? At) _top;
    private (double Rows, double Agree) _gearColumn;

    /// <summary>Begins a trace.</summary>
    /// <param name="question">What is known of the car.</param>
    public TraceAnalyser(TraceQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        _question = question;
        _laps = new LapCounter(question.LapLength);
        _limiter = new LimiterWatch(question.Car.Engine.Limiter.RevolutionsPerMinute);
        _slip = new SlipTally(question.Car.Drivetrain.Gears.Count);
    }

    /// <summary>Rows that were added and used.</summary>
    public long Rows { get; private set; }

    /// <summary>Rows left out because time, speed or engine speed is missing.</summary>
    public long RowsMissing { get; private set; }

    /// <summary>Rows left out because their time is before that of the row above.</summary>
    public long RowsOutOfOrder { get; private set; }

    /// <summary>Rows left out because they repeat the time of the row above.</summary>
    public long RowsRepeated { get; private set; }

    /// <summary>Places where rows are missing for more than one second.</summary>
    public int Gaps { get; private set; }

    /// <summary>Adds a row.</summary>
    /// <param name="row">The row; times rise.</param>
    public void Add(in TraceSample row)
    {
        if (!double.IsFinite(row.TimeS) || !double.IsFinite(row.SpeedMps) || !double.IsFinite(row.EngineRpm))
        {
            RowsMissing++;
            return;
        }

        if (row.TimeS <= _rowBefore.TimeS + SameTimeS)
        {
            if (row.TimeS < _rowBefore.TimeS - SameTimeS)
            {
                RowsOutOfOrder++;
            }
            else
            {
                RowsRepeated++;
            }

            return;
        }

        Rows++;
        _rowBefore = row;
        if (_thinner.Add(row, out TraceSample thinned))
        {
            Take(thinned);
        }
    }

    /// <summary>Ends the trace.</summary>
    /// <returns>What it shows.</returns>
    public TraceFigures Finish()
    {
        if (_thinner.Finish(out TraceSample last))
        {
            Take(last);
        }

        Fit();
        _corners.Finish();
        _limiter.End(_before.TimeS);
        IReadOnlyList<ShiftSeen> shifts = _gears?.Shifts ?? [];
        return new TraceFigures
        {
            Rows = Rows,
            RowsMissing = RowsMissing,
            RowsOutOfOrder = RowsOutOfOrder,
            RowsRepeated = RowsRepeated,
            Gaps = Gaps,
            GapTime = Duration.FromSeconds(_gapS),
            Start = Duration.FromSeconds(double.IsNaN(_firstS) ? 0 : _firstS),
            Recorded = Duration.FromSeconds(_recordedS),
            EngineRunning = Duration.FromSeconds(_engineS),
            Moving = Duration.FromSeconds(_movingS),
            Distance = Length.FromMeters(_odometerM),
            Bridged = Length.FromMeters(_bridgedM),
            TopSpeed = Speed.FromMetersPerSecond(_top.Mps),
            TopSpeedAt = _top.At,
            GearFit = _fit!,
            GearColumnAgrees = _gearColumn.Rows > 0 ? _gearColumn.Agree / _gearColumn.Rows : null,
            Slip = SlipSeen.Of(_slip.Result(), _question.SpeedSource),
            TimeInGear = [.. (_gears?.SecondsInGear ?? []).Select(s => Duration.FromSeconds(s))],
            AtLimiter = _limiter.AtLimiter,
            OverRevs = _limiter.Marked(shifts),
            LapBasis = _laps.Basis,
            Laps = _laps.Laps,
            Corners = _corners.Corners,
            Shifts = shifts,
            BestLapLine = _line.Best,
        };
    }

    private void Take(in TraceSample row)
    {
        if (_kept is not { } kept)
        {
            Follow(row);
            return;
        }

        bool isDriving = row is { SpeedMps: > DrivingMps, EngineRpm: > DrivingRpm };
        if (kept.Count == 0 && !isDriving)
        {
            Follow(row);
            return;
        }

        if (isDriving)
        {
            double interval = kept.Count > 0 ? Math.Min(row.TimeS - kept[^1].TimeS, GapS) : 0;
            _histogram.Add(RatioHistogram.LogRatio(row.EngineRpm, row.SpeedMps), interval);
            _drivingKept++;
        }

        kept.Add(row);
        if (_drivingKept >= RowsToFit || kept.Count >= MostRowsKept)
        {
            Fit();
        }
    }

    private void Fit()
    {
        if (_kept is not { } kept)
        {
            return;
        }

        _kept = null;
        _fit = GearFit.Of(_histogram, _question.Car.Drivetrain, _question.Car.Tyre.Circumference.Meters);
        _gears = _fit.IsFound ? new GearTracker(_fit, _question) : null;
        foreach (TraceSample row in kept)
        {
            Follow(row);
        }
    }

    private void Follow(in TraceSample row)
    {
        double interval = row.TimeS - _before.TimeS;
        if (double.IsNaN(interval))
        {
            (_firstS, interval) = (row.TimeS, 0);
        }
        else if (interval > GapS)
        {
            Gap(row, interval);
            interval = 0;
        }

        double meanMps = (row.SpeedMps + _before.SpeedMps) / 2;
        double accelerationMps2 = interval > 0 ? (row.SpeedMps - _before.SpeedMps) / interval : 0;
        _odometerM += Math.Max(0, meanMps) * interval;
        _recordedS += interval;
        _engineS += row.EngineRpm >= EngineRunningRpm ? interval : 0;
        _movingS += row.SpeedMps >= MovingMps ? interval : 0;
        _before = row;
        _laps.Add(row, _odometerM, interval);
        var point = new TracePointSeen(
            row,
            row is { SpeedMps: > 0, EngineRpm: > 0 } ? RatioHistogram.LogRatio(row.EngineRpm, row.SpeedMps) : double.NaN,
            _odometerM,
            interval,
            _laps.Lap,
            _laps.InLap(_odometerM));
        if (row.SpeedMps > _top.Mps)
        {
            _top = (row.SpeedMps, point.Place);
        }

        int gear = _gears?.Add(point) ?? 0;
        if (gear != 0 && !double.IsNaN(row.Gear))
        {
            _gearColumn = (_gearColumn.Rows + 1, _gearColumn.Agree + (Math.Abs(row.Gear - gear) < 0.5 ? 1 : 0));
        }

        _slip.Add(point, gear, accelerationMps2);
        _limiter.Add(point, _gears?.Gear ?? 0);
        _corners.Add(point);
        _line.Add(point, gear, _laps.Laps);
    }

    // Distance is carried over a short gap, so that places in the lap stay right; nothing else is.
    private void Gap(in TraceSample row, double seconds)
    {
        Gaps++;
        _gapS += seconds;
        if (seconds <= BridgedS)
        {
            double metres = (row.SpeedMps + _before.SpeedMps) / 2 * seconds;
            _odometerM += metres;
            _bridgedM += metres;
        }

        _gears?.Break();
        _corners.Break();
        _laps.Gap();
        _limiter.End(_before.TimeS);
    }
}
