using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>When and where something happened.</summary>
/// <param name="Time">By the trace's own clock.</param>
/// <param name="Lap">The lap's number; 0 before the first lap begins, or when laps cannot be told.</param>
/// <param name="InLap">Distance since the lap began; null when laps cannot be told.</param>
public sealed record TracePlace(Duration Time, int Lap, Length? InLap);

/// <summary>A sample with what was added up until then.</summary>
internal readonly record struct TracePointSeen(TraceSample Sample, double LogRatio, double OdometerM, double IntervalS, int Lap, double InLapM)
{
    internal TracePlace Place => new(
        Duration.FromSeconds(Sample.TimeS), Lap, double.IsNaN(InLapM) ? null : Length.FromMeters(InLapM));
}
