namespace Layshaft.Site.Charts;

/// <summary>An axis: its name, and how a number on it is written. The unit is the caller's choice.</summary>
/// <param name="Name">Name with unit, for example "road speed, km/h".</param>
/// <param name="Format">Writes one tick's number, without the unit.</param>
public sealed record Axis(string Name, Func<double, string> Format);

/// <summary>A second scale along the same axis, in another unit.</summary>
/// <param name="Name">Name with unit.</param>
/// <param name="Format">Writes one tick's number, without the unit.</param>
/// <param name="Factor">How many of this unit make one of the first; above 0.</param>
public sealed record SecondAxis(string Name, Func<double, string> Format, double Factor);

/// <summary>A tick that the caller places, for axes where round numbers mean nothing (dates, seasons).</summary>
/// <param name="Value">Where on the axis.</param>
/// <param name="Label">What it says.</param>
public sealed record AxisTick(double Value, string Label);

/// <summary>A value marked across a chart, with its words.</summary>
/// <param name="Value">Where on the axis.</param>
/// <param name="Label">What it says, value and unit included.</param>
public sealed record LevelMark(double Value, string Label);

/// <summary>A value with its lower and upper bound, marked on a chart with its words.</summary>
/// <param name="Value">The value itself.</param>
/// <param name="Lower">Lower bound; null where there is none to give.</param>
/// <param name="Upper">Upper bound; null where there is none to give.</param>
/// <param name="Label">What it says, value and unit included.</param>
public sealed record BoundedMark(double Value, double? Lower, double? Upper, string Label);
