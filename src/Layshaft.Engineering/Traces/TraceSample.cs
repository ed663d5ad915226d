namespace Layshaft.Engineering.Traces;

/// <summary>One row of what the car itself recorded. A channel that is missing is not a number (NaN).</summary>
/// <param name="TimeS">Time, s.</param>
/// <param name="SpeedMps">Road speed, m/s.</param>
/// <param name="EngineRpm">Engine speed, 1/min.</param>
public readonly record struct TraceSample(double TimeS, double SpeedMps, double EngineRpm)
{
    /// <summary>Distance, m; it may start again with each lap.</summary>
    public double DistanceM { get; init; } = double.NaN;

    /// <summary>Gear by the car's own sensor.</summary>
    public double Gear { get; init; } = double.NaN;

    /// <summary>Throttle opening, 0 to 1.</summary>
    public double Throttle { get; init; } = double.NaN;

    /// <summary>Latitude, degrees.</summary>
    public double LatitudeDeg { get; init; } = double.NaN;

    /// <summary>Longitude, degrees.</summary>
    public double LongitudeDeg { get; init; } = double.NaN;

    /// <summary>Lap number or marker: each change begins a lap.</summary>
    public double Lap { get; init; } = double.NaN;
}
