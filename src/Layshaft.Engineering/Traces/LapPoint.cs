namespace Layshaft.Engineering.Traces;

/// <summary>A point of a lap, for drawing.</summary>
/// <param name="InLapM">Distance since the lap began, m.</param>
/// <param name="SpeedMps">Road speed, m/s.</param>
/// <param name="EngineRpm">Engine speed, 1/min.</param>
/// <param name="Gear">The gear that is in, from 1; 0 between gears.</param>
public readonly record struct LapPoint(double InLapM, double SpeedMps, double EngineRpm, int Gear);

/// <summary>Keeps the points of the lap that is going on and of the fastest until then.</summary>
internal sealed class LapLine
{
    private const double SpacingM = 12;
    private const int MostPoints = 2500;

    private List<LapPoint> _current = [];
    private int _laps;
    private double _bestS = double.PositiveInfinity;

    internal IReadOnlyList<LapPoint> Best { get; private set; } = [];

    internal void Add(in TracePointSeen point, int gear, List<LapSeen> laps)
    {
        if (laps.Count > _laps)
        {
            _laps = laps.Count;
            LapSeen lap = laps[^1];
            if (!lap.HasGaps && lap.Time.Seconds < _bestS)
            {
                (_bestS, Best) = (lap.Time.Seconds, _current);
            }

            _current = [];
        }

        bool isNext = _current.Count == 0 || point.InLapM >= _current[^1].InLapM + SpacingM
            || (gear != _current[^1].Gear && point.InLapM > _current[^1].InLapM);
        if (!double.IsNaN(point.InLapM) && isNext && _current.Count < MostPoints)
        {
            _current.Add(new LapPoint(point.InLapM, point.Sample.SpeedMps, point.Sample.EngineRpm, gear));
        }
    }
}
