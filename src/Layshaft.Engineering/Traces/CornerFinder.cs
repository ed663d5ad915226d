using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>
/// Corners are where the speed is least, between a fall and a rise of at least 3 m/s each (Layshaft's own convention): what is
/// driven through with less is part of a straight.
/// </summary>
internal sealed class CornerFinder
{
    private const double LeastChangeMps = 3;
    private const double SlowestMps = 4;
    private const double FullThrottle = 0.95;
    private const double ThrottleLost = 0.8;
    private const double LongestShiftS = 0.3;

    private TracePointSeen _extreme;
    private bool _isRising;
    private bool _isStarted;
    private double _exitMps = double.NaN;
    private bool _isExitSure;
    private double _liftedS;
    private (TracePointSeen Point, double ExitMps, double TopMps)? _corner;

    internal List<CornerSeen> Corners { get; } = [];

    internal void Break()
    {
        Close(null);
        _isStarted = false;
        _isRising = false;
        _exitMps = double.NaN;
    }

    internal void Add(in TracePointSeen point)
    {
        double speed = point.Sample.SpeedMps;
        if (!_isStarted)
        {
            (_isStarted, _extreme) = (true, point);
            return;
        }

        if (_isRising)
        {
            Exit(point);
            if (speed > _extreme.Sample.SpeedMps)
            {
                _extreme = point;
            }
            else if (speed < _extreme.Sample.SpeedMps - LeastChangeMps)
            {
                if (_corner is { } corner)
                {
                    _corner = (corner.Point, _exitMps, _extreme.Sample.SpeedMps);
                }

                (_isRising, _extreme) = (false, point);
            }

            return;
        }

        if (speed < _extreme.Sample.SpeedMps)
        {
            (_extreme, _exitMps, _isExitSure) = (point, double.NaN, false);
        }
        else if (speed > _extreme.Sample.SpeedMps + LeastChangeMps)
        {
            Close(_extreme);
            _corner = _extreme.Sample.SpeedMps < SlowestMps ? null : (_extreme, double.NaN, speed);
            (_isRising, _extreme) = (true, point);
            Exit(point);
        }
        else
        {
            Exit(point);
        }
    }

    internal void Finish() => Close(null);

    // Full throttle begins where it is opened for good: a lift that is longer than a shift, before three metres a second are gained, ends it.
    private void Exit(in TracePointSeen point)
    {
        double throttle = point.Sample.Throttle;
        if (_isExitSure || double.IsNaN(throttle))
        {
            return;
        }

        if (double.IsNaN(_exitMps))
        {
            _exitMps = throttle >= FullThrottle ? point.Sample.SpeedMps : double.NaN;
            _liftedS = 0;
        }
        else if (throttle < ThrottleLost)
        {
            _liftedS += point.IntervalS;
            _exitMps = _liftedS > LongestShiftS ? double.NaN : _exitMps;
        }
        else if (point.Sample.SpeedMps > _exitMps + LeastChangeMps)
        {
            _isExitSure = true;
        }
    }

    private void Close(TracePointSeen? next)
    {
        if (_corner is { } corner)
        {
            double exit = _isRising ? _exitMps : corner.ExitMps;
            double top = _isRising ? _extreme.Sample.SpeedMps : corner.TopMps;
            Corners.Add(new CornerSeen(
                corner.Point.Place,
                Speed.FromMetersPerSecond(corner.Point.Sample.SpeedMps),
                double.IsNaN(exit) ? null : Speed.FromMetersPerSecond(exit),
                Speed.FromMetersPerSecond(top),
                next is { } slowest ? Length.FromMeters(slowest.OdometerM - corner.Point.OdometerM) : null));
            _corner = null;
        }
    }
}
