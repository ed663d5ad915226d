using Layshaft.Engineering.Traces;

namespace Layshaft.Engineering.Tests.Traces;

/// <summary>A corner of a made-up circuit with the straight after it.</summary>
/// <param name="LeastMps">Least speed, held for 0.6 s.</param>
/// <param name="ExitMps">Speed at which the throttle is fully open.</param>
/// <param name="ToNextM">Distance from there to the slowest point of the next corner.</param>
internal sealed record MadeUpCorner(double LeastMps, double ExitMps, double ToNextM);

/// <summary>How a made-up car is driven and recorded.</summary>
internal sealed record MadeUpDrive
{
    /// <summary>Engine turns for one of the wheels, by gear.</summary>
    public required double[] Overall { get; init; }

    public required MadeUpCorner[] Corners { get; init; }

    /// <summary>Forward acceleration at full throttle, m/s², before drag, by speed and gear index.</summary>
    public required Func<double, int, double> Pull { get; init; }

    public double CircumferenceM { get; init; } = 1.9;

    /// <summary>Slip at a forward acceleration of 5 m/s²; in proportion to it.</summary>
    public double Slip { get; init; }

    public double ShiftRpm { get; init; } = 7600;

    public double ShiftS { get; init; } = 0.09;

    public double DownshiftS { get; init; } = 0.14;

    public double DownshiftRpm { get; init; } = 6800;

    public double LimiterRpm { get; init; } = 8200;

    public double BrakingMps2 { get; init; } = 10;

    public double DragPerM { get; init; } = 0.0009;

    public int Laps { get; init; } = 3;

    /// <summary>Whether the engine is matched, by shift (from, to, lap): else it turns freely and the dogs catch it.</summary>
    public Func<int, int, int, bool> IsMatched { get; init; } = (_, _, _) => true;

    /// <summary>Engine speed in the lower gear at which a downshift is made, if it is another than usual (from, to, lap).</summary>
    public Func<int, int, int, double?> DownshiftAt { get; init; } = (_, _, _) => null;
}

/// <summary>What really happened in a made-up shift.</summary>
internal sealed record MadeUpShift(int From, int To, int Lap, double TimeS, double RpmBefore, double OverRpm, double LengthS);

/// <summary>Drives made-up laps in steps of a millisecond, with nothing taken from the program that is tested.</summary>
internal sealed class MadeUpLaps
{
    private const double StepS = 0.001;
    private const double FreeFallRpmPerS = 5000;

    private readonly MadeUpDrive _drive;
    private double _timeS;
    private double _speed;
    private double _distance;
    private double _rpm;
    private double _throttle;
    private double _acceleration;
    private int _gear;
    private int _lap = 1;

    private MadeUpLaps(MadeUpDrive drive) => _drive = drive;

    /// <summary>A row for each millisecond, without noise.</summary>
    public List<TraceSample> Rows { get; } = [];

    public List<MadeUpShift> Shifts { get; } = [];

    public List<(double TimeS, double DistanceM)> LapEnds { get; } = [];

    /// <summary>Least speeds as driven, in order.</summary>
    public List<double> Leasts { get; } = [];

    public List<double> Exits { get; } = [];

    public double[] SecondsInGear { get; private set; } = [];

    public double DistanceM => _distance;

    public static MadeUpLaps Drive(MadeUpDrive drive)
    {
        var laps = new MadeUpLaps(drive) { SecondsInGear = new double[drive.Overall.Length] };
        laps._speed = drive.Corners[0].LeastMps;
        laps._gear = laps.LowestGear(laps._speed);
        for (laps._lap = 1; laps._lap <= drive.Laps; laps._lap++)
        {
            for (int i = 0; i < drive.Corners.Length; i++)
            {
                laps.Corner(drive.Corners[i]);
                laps.Straight(drive.Corners[i], drive.Corners[(i + 1) % drive.Corners.Length].LeastMps);
            }

            laps.LapEnds.Add((laps._timeS, laps._distance));
        }

        return laps;
    }

    /// <summary>The rows at a rate, each channel with noise, some lost.</summary>
    public IEnumerable<TraceSample> Recorded(double hertz, double speedNoise = 0, double rpmNoise = 0, int seed = 1, double startS = 0.0003, Func<TraceSample, bool>? isLost = null)
    {
        var random = new Random(seed);
        double Noise() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        for (int k = 0; ; k++)
        {
            int index = (int)Math.Round((startS + (k / hertz)) / StepS);
            if (index >= Rows.Count)
            {
                yield break;
            }

            TraceSample row = Rows[index];
            row = row with { TimeS = k / hertz, SpeedMps = row.SpeedMps + (speedNoise * Noise()), EngineRpm = row.EngineRpm + (rpmNoise * Noise()) };
            if (isLost?.Invoke(row) != true)
            {
                yield return row;
            }
        }
    }

    private double Wheel(double speed) => 60 * speed / (_drive.CircumferenceM * (1 - Math.Max(0, _drive.Slip * _acceleration / 5)));

    private double Sync(int gear) => Wheel(_speed) * _drive.Overall[gear];

    private int LowestGear(double speed)
    {
        int gear = 0;
        while (gear < _drive.Overall.Length - 1 && 60 * speed / _drive.CircumferenceM * _drive.Overall[gear] > _drive.DownshiftRpm)
        {
            gear++;
        }

        return gear;
    }

    private void Step(double acceleration, double throttle, double? rpm = null)
    {
        _acceleration = acceleration;
        _throttle = throttle;
        _timeS += StepS;
        _distance += (_speed + (acceleration * StepS / 2)) * StepS;
        _speed += acceleration * StepS;
        _rpm = rpm ?? Sync(_gear);
        if (rpm is null)
        {
            SecondsInGear[_gear] += StepS;
        }

        Rows.Add(new TraceSample(_timeS, _speed, _rpm)
        {
            Throttle = _throttle,
            Lap = _lap,
            DistanceM = _distance,
            Gear = _gear + 1,
        });
    }

    private void Corner(MadeUpCorner corner)
    {
        Leasts.Add(_speed);
        for (double t = 0; t < 0.6; t += StepS)
        {
            Step(0, 0.2);
        }

        while (_speed < corner.ExitMps)
        {
            Step(3, 0.6);
        }

        Exits.Add(_speed);
    }

    private void Straight(MadeUpCorner corner, double nextMps)
    {
        double end = _distance + corner.ToNextM;
        while (true)
        {
            double braking = ((_speed * _speed) - (nextMps * nextMps)) / (2 * _drive.BrakingMps2);
            if (_distance + Math.Max(0, braking) >= end)
            {
                break;
            }

            double drag = _drive.DragPerM * _speed * _speed;
            if (_rpm >= _drive.ShiftRpm && _gear < _drive.Overall.Length - 1)
            {
                Shift(_gear + 1, _drive.ShiftS, () => -_drive.DragPerM * _speed * _speed, 0);
                continue;
            }

            double pull = _rpm >= _drive.LimiterRpm ? 0 : _drive.Pull(_speed, _gear);
            Step(pull - drag, 1);
        }

        int wanted = LowestGear(nextMps);
        while (_speed > nextMps + 0.005)
        {
            if (_gear > wanted && Wheel(_speed) * _drive.Overall[_gear - 1] <= (_drive.DownshiftAt(_gear + 1, _gear, _lap) ?? _drive.DownshiftRpm))
            {
                Shift(_gear - 1, _drive.DownshiftS, () => _speed > nextMps ? -_drive.BrakingMps2 : 0, 0);
                for (int i = 0; i < 150; i++)
                {
                    Step(_speed > nextMps ? -_drive.BrakingMps2 : 0, 0);
                }

                continue;
            }

            Step(-_drive.BrakingMps2, 0);
        }
    }

    private void Shift(int to, double seconds, Func<double> acceleration, double throttle)
    {
        bool isMatched = _drive.IsMatched(_gear + 1, to + 1, _lap);
        double before = _rpm, start = _timeS;
        int from = _gear;
        _gear = to;
        int steps = (int)Math.Round(seconds / StepS);
        double rpm = before;
        for (int i = 1; i <= steps; i++)
        {
            double sync = Sync(to);
            rpm = isMatched
                ? before + ((sync - before) * i / steps)
                : Math.Max(Math.Min(before, sync), rpm - (FreeFallRpmPerS * StepS));
            Step(acceleration(), throttle, rpm);
        }

        Shifts.Add(new MadeUpShift(from + 1, to + 1, _lap, start, before, _rpm - Sync(to), seconds));
    }
}
