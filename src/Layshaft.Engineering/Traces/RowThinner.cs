namespace Layshaft.Engineering.Traces;

/// <summary>Averages rows that are closer than 5 ms, so that a trace of 1000 Hz is followed at 200 Hz: no shift needs more.</summary>
internal sealed class RowThinner
{
    private const double LeastIntervalS = 0.005;

    private TraceSample _first;
    private Sums _sums;
    private int _count;

    /// <summary>Takes a row; gives the rows before it as one when it is far enough from the first of them.</summary>
    internal bool Add(in TraceSample row, out TraceSample thinned)
    {
        bool isFull = _count > 0 && row.TimeS - _first.TimeS >= LeastIntervalS - 1e-9;
        thinned = isFull ? Take() : default;
        if (_count == 0)
        {
            _first = row;
        }

        _count++;
        _sums.Add(row);
        return isFull;
    }

    /// <summary>Gives what is left.</summary>
    internal bool Finish(out TraceSample thinned)
    {
        bool any = _count > 0;
        thinned = any ? Take() : default;
        return any;
    }

    private TraceSample Take()
    {
        TraceSample row = _count == 1 ? _first : _sums.Mean(_count);
        _count = 0;
        _sums = default;
        return row;
    }

    // Gear, lap and position are not averaged: the last is taken.
    private struct Sums
    {
        private double _time, _speed, _rpm, _throttle;
        private TraceSample _last;

        internal void Add(in TraceSample row)
        {
            _time += row.TimeS;
            _speed += row.SpeedMps;
            _rpm += row.EngineRpm;
            _throttle += row.Throttle;
            _last = row;
        }

        internal readonly TraceSample Mean(int count) => _last with
        {
            TimeS = _time / count,
            SpeedMps = _speed / count,
            EngineRpm = _rpm / count,
            Throttle = _throttle / count,
        };
    }
}
