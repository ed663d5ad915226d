namespace Layshaft.Site.Figures;

/// <summary>How many decimals a figure gets in each of its two customary units. Immutable.</summary>
/// <param name="Metric">Decimals of the metric unit, 0 to 9.</param>
/// <param name="Imperial">Decimals of the imperial unit, 0 to 9.</param>
public readonly record struct Decimals(int Metric, int Imperial)
{
    // One N·m is 0.74 lbf·ft and one lbf·ft 1.36 N·m: units of one size get as many decimals.
    private const double SameSize = 1.5;

    /// <summary>The fewest that show a step: the last digit stands for at most one and a half steps, and for more than a seventh of one.</summary>
    /// <param name="metricStep">The step in the metric unit, above 0.</param>
    /// <param name="imperialStep">The same step in the imperial unit.</param>
    /// <param name="most">The most decimals of either unit.</param>
    public static Decimals ForStep(double metricStep, double imperialStep, Decimals most) =>
        new(Math.Min(Fewest(metricStep), most.Metric), Math.Min(Fewest(imperialStep), most.Imperial));

    /// <summary>The more of each.</summary>
    public static Decimals Max(Decimals one, Decimals other) => new(Math.Max(one.Metric, other.Metric), Math.Max(one.Imperial, other.Imperial));

    private static int Fewest(double step) => Math.Max(0, (int)Math.Ceiling(-Math.Log10(SameSize * step) - 1e-9));
}
