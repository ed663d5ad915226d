namespace Layshaft.Site.Charts.Gearing;

/// <summary>Data of a <see cref="LapChart"/>. All distances run from the start of the lap.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Length">Length of the lap; above 0.</param>
/// <param name="Speeds">Speed along the lap, distance not falling; at least two points.</param>
/// <param name="Gears">The stretches driven in one gear.</param>
/// <param name="Corners">The slowest point of each corner.</param>
/// <param name="Distance">The lower axis.</param>
/// <param name="Speed">The upright axis of the upper field.</param>
/// <param name="EngineSpeed">The upright axis of the lower field.</param>
/// <param name="EngineLimit">The engine's limit.</param>
public sealed record LapChartInput(
    ChartFrame Frame,
    double Length,
    IReadOnlyList<ChartPoint> Speeds,
    IReadOnlyList<LapGear> Gears,
    IReadOnlyList<LapCorner> Corners,
    Axis Distance,
    Axis Speed,
    Axis EngineSpeed,
    LevelMark EngineLimit);

/// <summary>A stretch driven in one gear.</summary>
/// <param name="Label">The gear.</param>
/// <param name="EngineSpeeds">Engine speed along it, distance not falling; at least two points.</param>
public sealed record LapGear(string Label, IReadOnlyList<ChartPoint> EngineSpeeds);

/// <summary>The slowest point of a corner.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Label">Its number in the table of corners.</param>
public sealed record LapCorner(double At, string Label);
