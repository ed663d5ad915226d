using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>One corner as it was driven once, with the straight after it.</summary>
/// <param name="At">Where it was slowest.</param>
/// <param name="LeastSpeed">Least speed in it.</param>
/// <param name="ExitSpeed">Speed at which full throttle begins; null when the throttle was not recorded, or was not opened.</param>
/// <param name="TopSpeed">Greatest speed until the next corner.</param>
/// <param name="ToNext">Distance from here to the slowest point of the next corner; null when the trace ends before, or has a gap.</param>
public sealed record CornerSeen(TracePlace At, Speed LeastSpeed, Speed? ExitSpeed, Speed TopSpeed, Length? ToNext);
