namespace Layshaft.Site.Charts.Life;

/// <summary>Data of a <see cref="TrendChart"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Points">The measurements; at least one.</param>
/// <param name="X">The lower axis, hours as a rule; all X are in its unit.</param>
/// <param name="Y">The upright axis, the measured size; all Y are in its unit.</param>
/// <param name="Fit">The fitted line; null where there are too few points for one.</param>
/// <param name="Band">The prediction band round the fit; null leaves it out.</param>
/// <param name="Limit">The wear limit.</param>
/// <param name="AsNew">The size as new; null leaves it out.</param>
/// <param name="Crossing">Where the fit meets the limit, with bounds; null where it does not.</param>
public sealed record TrendInput(
    ChartFrame Frame,
    IReadOnlyList<MeasuredPoint> Points,
    Axis X,
    Axis Y,
    NamedPoints? Fit,
    Band? Band,
    LevelMark Limit,
    LevelMark? AsNew,
    BoundedMark? Crossing);

/// <summary>A measured value with its uncertainty.</summary>
/// <param name="X">When, on the lower axis.</param>
/// <param name="Y">The value.</param>
/// <param name="Uncertainty">Expanded uncertainty, half the whisker; 0 draws none.</param>
public sealed record MeasuredPoint(double X, double Y, double Uncertainty);

/// <summary>A line with an optional name.</summary>
/// <param name="Points">Two or more, X rising.</param>
/// <param name="Label">Written on the line; empty writes nothing.</param>
public sealed record NamedPoints(IReadOnlyList<ChartPoint> Points, string Label);

/// <summary>The area between two lines.</summary>
/// <param name="Upper">Two or more points, X rising.</param>
/// <param name="Lower">Two or more points, X rising.</param>
/// <param name="Label">What the band is, for example "95 % of new readings"; empty writes nothing.</param>
public sealed record Band(IReadOnlyList<ChartPoint> Upper, IReadOnlyList<ChartPoint> Lower, string Label);
