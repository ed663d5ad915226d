namespace Layshaft.Site.Charts.Gearing;

/// <summary>Data of a <see cref="SpeedPerGearChart"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Gears">The gears, lowest first; at least one.</param>
/// <param name="Speed">The lower axis; all speeds are in its unit.</param>
/// <param name="SecondSpeed">The same speeds in another unit along the top; null leaves it out.</param>
/// <param name="EngineSpeed">The upright axis; all engine speeds are in its unit.</param>
/// <param name="EngineLimit">The engine's limit.</param>
/// <param name="TopSpeed">The top speed to expect; null leaves it out.</param>
public sealed record SpeedPerGearInput(
    ChartFrame Frame,
    IReadOnlyList<GearLine> Gears,
    Axis Speed,
    SecondAxis? SecondSpeed,
    Axis EngineSpeed,
    LevelMark EngineLimit,
    LevelMark? TopSpeed);

/// <summary>One gear's line in the fan.</summary>
/// <param name="Label">Written at the line's end, for example "3".</param>
/// <param name="Points">Speed and engine speed, speed rising; two points make a straight line, more show tyre growth.</param>
/// <param name="UpshiftSpeed">Road speed at which the next gear is taken; null where this gear is kept to its end.</param>
/// <param name="Lands">Engine speed in the next gear then, to be written there; null reads it off the next gear's line.</param>
public sealed record GearLine(string Label, IReadOnlyList<ChartPoint> Points, double? UpshiftSpeed, double? Lands = null);
