using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>What laps were told by.</summary>
public enum LapBasis
{
    /// <summary>Nothing in the trace tells laps, and the venue's length is not known.</summary>
    None,

    /// <summary>The lap column changes.</summary>
    Marker,

    /// <summary>The car comes back to a place; that is not the timing line.</summary>
    Position,

    /// <summary>The recorded distance starts again.</summary>
    DistanceRestart,

    /// <summary>The distance travelled has grown by the venue's length, from where the trace begins: where the line is, is not known.</summary>
    LapLength,
}

/// <summary>One whole lap.</summary>
/// <param name="Number">By the marker if it counts, else from 1.</param>
/// <param name="Start">When it began, by the trace's own clock.</param>
/// <param name="Time">How long it took.</param>
/// <param name="TimeUncertainty">Expanded uncertainty (k = 2) of <paramref name="Time"/>; null when it is not known.</param>
/// <param name="Distance">Distance by the recorded speed.</param>
/// <param name="TopSpeed">Greatest speed.</param>
/// <param name="HasGaps">Whether rows are missing within it.</param>
public sealed record LapSeen(int Number, Duration Start, Duration Time, Duration? TimeUncertainty, Length Distance, Speed TopSpeed, bool HasGaps);
