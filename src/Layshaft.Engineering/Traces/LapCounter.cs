using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>Tells laps by the best that the trace has: marker, then position, then a distance that starts again, then the venue's length.</summary>
internal sealed class LapCounter(Length? lapLength)
{
    private const double EarthM = 6_371_000;
    private const double NearM = 30;
    private const double LeastLapM = 400;

    // A wheel's speed is rarely truer than this over a lap (common practice, no source).
    private const double DistanceShare = 0.01;

    private double _marker = double.NaN;
    private double _restart = double.NaN;
    private (double Lat, double Lon) _home = (double.NaN, double.NaN);
    private double _nearestM = double.PositiveInfinity;
    private (double TimeS, double OdometerM) _nearest;
    private double _startS;
    private double _startM;
    private double _topMps;
    private bool _hasGaps;
    private double _intervalS;

    internal LapBasis Basis { get; private set; }

    internal int Lap { get; private set; }

    internal List<LapSeen> Laps { get; } = [];

    /// <summary>Distance since the lap began; not a number before the first lap.</summary>
    internal double InLap(double odometerM) => Lap == 0 ? double.NaN : odometerM - _startM;

    internal void Gap() => _hasGaps = true;

    internal void Add(in TraceSample sample, double odometerM, double intervalS)
    {
        _topMps = Math.Max(_topMps, sample.SpeedMps);
        _intervalS = intervalS;
        if (!double.IsNaN(sample.Lap))
        {
            Basis = LapBasis.Marker;
            if (!double.IsNaN(_marker) && sample.Lap > _marker)
            {
                Begin(sample.TimeS, odometerM, (int)Math.Min(sample.Lap, 1e6));
            }

            _marker = sample.Lap;
        }
        else if (Basis is LapBasis.None or LapBasis.Position && !double.IsNaN(sample.LatitudeDeg + sample.LongitudeDeg))
        {
            Basis = LapBasis.Position;
            ByPosition(sample, odometerM);
        }
        else if (Basis is LapBasis.None or LapBasis.DistanceRestart or LapBasis.LapLength && !double.IsNaN(sample.DistanceM) && IsRestart(sample.DistanceM))
        {
            Basis = LapBasis.DistanceRestart;
            Begin(sample.TimeS, odometerM);
        }

        if (Basis is LapBasis.None or LapBasis.LapLength && lapLength is { } length)
        {
            Basis = LapBasis.LapLength;
            if (Lap == 0 ? sample.SpeedMps > 15 : odometerM - _startM >= length.Meters)
            {
                Begin(sample.TimeS, odometerM);
            }
        }
    }

    private bool IsRestart(double distanceM)
    {
        bool restarts = distanceM < _restart - Math.Max(100, 0.5 * _restart);
        _restart = distanceM;
        return restarts;
    }

    private void ByPosition(in TraceSample sample, double odometerM)
    {
        if (double.IsNaN(_home.Lat))
        {
            if (sample.SpeedMps > 20)
            {
                _home = (sample.LatitudeDeg, sample.LongitudeDeg);
                Begin(sample.TimeS, odometerM);
            }

            return;
        }

        double north = (sample.LatitudeDeg - _home.Lat) * Math.PI / 180 * EarthM;
        double east = (sample.LongitudeDeg - _home.Lon) * Math.PI / 180 * EarthM * Math.Cos(_home.Lat * Math.PI / 180);
        double awayM = Math.Sqrt((north * north) + (east * east));
        if (awayM <= NearM && odometerM - _startM > LeastLapM)
        {
            if (awayM < _nearestM)
            {
                (_nearestM, _nearest) = (awayM, (sample.TimeS, odometerM));
            }
        }
        else if (!double.IsPositiveInfinity(_nearestM))
        {
            Begin(_nearest.TimeS, _nearest.OdometerM);
            _nearestM = double.PositiveInfinity;
        }
    }

    // A marker that counts gives the lap its number; one that only pulses does not.
    private void Begin(double timeS, double odometerM, int number = 0)
    {
        double distanceM = odometerM - _startM;
        if (Lap > 0)
        {
            double time = timeS - _startS;
            double standard = Basis == LapBasis.LapLength ? DistanceShare * time : _intervalS / Math.Sqrt(6);
            Laps.Add(new LapSeen(
                Lap,
                Duration.FromSeconds(_startS),
                Duration.FromSeconds(time),
                Duration.FromSeconds(2 * standard),
                Length.FromMeters(distanceM),
                Speed.FromMetersPerSecond(_topMps),
                _hasGaps));
        }

        Lap = Math.Max(Lap + 1, number);
        (_startS, _startM, _topMps, _hasGaps) = (timeS, odometerM, 0, false);
    }
}
