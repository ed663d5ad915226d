namespace Layshaft.Engineering.Gearing;

/// <summary>The least and the greatest overall ratio of the gearings that an ideal is held against.</summary>
internal readonly record struct RatioRange(double Least, double Greatest);
