using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>Engine speed above the limiter.</summary>
/// <param name="At">Where it was highest.</param>
/// <param name="Peak">Highest recorded engine speed: at least that.</param>
/// <param name="Gear">The gear that was in; 0 when that is not known.</param>
/// <param name="IsAfterDownshift">Whether a downshift was made within the second before.</param>
public sealed record OverRev(TracePlace At, RotationalSpeed Peak, int Gear, bool IsAfterDownshift);

/// <summary>Watches time at the limiter and engine speeds above it.</summary>
/// <remarks>
/// At the limiter: within 1.5 % below it to 1 % above, for at least 0.15 s without a break. Above it: by more than 1 %. A
/// limiter cuts in within such a band, and shorter stays are shifts (Layshaft's own convention).
/// </remarks>
internal sealed class LimiterWatch(double limiterRpm)
{
    private const double Above = 1.01;
    private const double Below = 0.985;
    private const double LeastStayS = 0.15;
    private const double AfterShiftS = 1;
    private const double SameS = 0.5;

    private double _stayS;
    private readonly List<(OverRev Over, double StartS, double EndS)> _overRevs = [];
    private TracePointSeen? _peak;
    private int _peakGear;
    private double _startS;
    private double _totalS;

    internal Duration AtLimiter => Duration.FromSeconds(_totalS + (_stayS >= LeastStayS ? _stayS : 0));

    internal void Add(in TracePointSeen point, int gear)
    {
        double rpm = point.Sample.EngineRpm;
        if (rpm > Above * limiterRpm)
        {
            if (_peak is not { } peak)
            {
                _startS = point.Sample.TimeS;
                (_peak, _peakGear) = (point, gear);
            }
            else if (rpm > peak.Sample.EngineRpm)
            {
                (_peak, _peakGear) = (point, gear == 0 ? _peakGear : gear);
            }
        }
        else
        {
            End(point.Sample.TimeS);
        }

        if (rpm >= Below * limiterRpm && rpm <= Above * limiterRpm)
        {
            _stayS += point.IntervalS;
        }
        else
        {
            _totalS += _stayS >= LeastStayS ? _stayS : 0;
            _stayS = 0;
        }
    }

    internal void End(double timeS)
    {
        if (_peak is { } peak)
        {
            var over = (new OverRev(peak.Place, RotationalSpeed.FromRevolutionsPerMinute(peak.Sample.EngineRpm), _peakGear, false), _startS, timeS);
            if (_overRevs.Count > 0 && _startS - _overRevs[^1].EndS < SameS)
            {
                var before = _overRevs[^1];
                _overRevs[^1] = (before.Over.Peak >= over.Item1.Peak ? before.Over : over.Item1, before.StartS, timeS);
            }
            else
            {
                _overRevs.Add(over);
            }

            _peak = null;
        }
    }

    /// <summary>The over-revs, those after a downshift marked: a shift is known for certain only some rows after it.</summary>
    internal IReadOnlyList<OverRev> Marked(IReadOnlyList<ShiftSeen> shifts)
    {
        var marked = new List<OverRev>(_overRevs.Count);
        int next = 0;
        foreach (var (over, start, end) in _overRevs)
        {
            while (next < shifts.Count && shifts[next].At.Time.Seconds < start - AfterShiftS)
            {
                next++;
            }

            ShiftSeen? cause = null;
            for (int i = next; i < shifts.Count && shifts[i].At.Time.Seconds <= end; i++)
            {
                cause = shifts[i].IsUpshift ? cause : shifts[i];
            }

            marked.Add(cause is null ? over : over with { IsAfterDownshift = true, Gear = cause.To });
        }

        return marked;
    }
}
