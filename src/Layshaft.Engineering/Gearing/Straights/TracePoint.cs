using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One point of a run down a straight.</summary>
/// <param name="TimeS">Time since the corner exit, s.</param>
/// <param name="PositionM">Distance from the corner exit, m.</param>
/// <param name="SpeedMps">Speed, m/s.</param>
/// <param name="Gear">The gear that drives, from 1; 0 during a shift and under braking.</param>
public readonly record struct TracePoint(double TimeS, double PositionM, double SpeedMps, int Gear)
{
    /// <summary>Time since the corner exit.</summary>
    public Duration Time => Duration.FromSeconds(TimeS);

    /// <summary>Distance from the corner exit.</summary>
    public Length Position => Length.FromMeters(PositionM);

    /// <summary>Speed.</summary>
    public Speed Speed => Speed.FromMetersPerSecond(SpeedMps);
}
