namespace Layshaft.Site.Charts.Photos;

/// <summary>Data of <see cref="PhotoCallouts"/>.</summary>
/// <param name="Frame">Id prefix, title, description; the words of the callouts are added to the description.</param>
/// <param name="PixelWidth">Width of the picture under the callouts, px; above 0.</param>
/// <param name="PixelHeight">Height of the picture under the callouts, px; above 0.</param>
/// <param name="Callouts">What is pointed out.</param>
public sealed record PhotoCalloutsInput(ChartFrame Frame, int PixelWidth, int PixelHeight, IReadOnlyList<Callout> Callouts);

/// <summary>One thing pointed out. Places are fractions of the picture: 0, 0 its top left, 1, 1 its bottom right.</summary>
/// <param name="X">Across, 0 to 1.</param>
/// <param name="Y">Down, 0 to 1.</param>
/// <param name="Radius">Radius of a circle, as a fraction of the picture's width; null points with an arrow instead.</param>
/// <param name="Label">The words; may be empty.</param>
/// <param name="LabelX">Middle of the words, across, 0 to 1; null places them near the spot.</param>
/// <param name="LabelY">Middle of the words, down, 0 to 1; null places them near the spot.</param>
public sealed record Callout(double X, double Y, double? Radius, string Label, double? LabelX = null, double? LabelY = null);
