namespace Layshaft.Site.Charts.Gearing;

/// <summary>Data of a <see cref="WheelForceChart"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Gears">Wheel force against road speed, per gear, lowest first; at least one.</param>
/// <param name="Speed">The lower axis; all speeds are in its unit.</param>
/// <param name="SecondSpeed">The same speeds in another unit along the top; null leaves it out.</param>
/// <param name="Force">The upright axis; all forces are in its unit.</param>
/// <param name="Drag">Total drag: air, rolling and grade; null leaves it out.</param>
/// <param name="Traction">The most force that the tyres take; null leaves it out.</param>
/// <param name="Crossing">Where drive and drag balance; null leaves it out.</param>
public sealed record WheelForceInput(
    ChartFrame Frame,
    IReadOnlyList<NamedLine> Gears,
    Axis Speed,
    SecondAxis? SecondSpeed,
    Axis Force,
    NamedLine? Drag,
    NamedLine? Traction,
    NamedPoint? Crossing);

/// <summary>A line with its name.</summary>
/// <param name="Label">Written beside the line.</param>
/// <param name="Points">Two or more, X rising.</param>
public sealed record NamedLine(string Label, IReadOnlyList<ChartPoint> Points);

/// <summary>A point with its name.</summary>
/// <param name="Label">Written beside the point, values and units included.</param>
/// <param name="Point">Where.</param>
public sealed record NamedPoint(string Label, ChartPoint Point);
