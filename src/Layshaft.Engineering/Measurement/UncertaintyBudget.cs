namespace Layshaft.Engineering.Measurement;

/// <summary>
/// All contributions to the uncertainty of one result, taken as independent of each other
/// (JCGM 100:2008, clause 5 and annex G).
/// </summary>
/// <param name="Components">The contributions, all in the unit of the result; may be empty when nothing is known.</param>
public sealed record UncertaintyBudget(IReadOnlyList<UncertaintyComponent> Components)
{
    /// <summary>Combined standard uncertainty: root of the sum of squares (JCGM 100, 5.1.2), in the unit of the result.</summary>
    public double StandardUncertainty => Math.Sqrt(Components.Sum(c => c.StandardUncertainty * c.StandardUncertainty));

    /// <summary>
    /// Effective degrees of freedom by Welch–Satterthwaite (JCGM 100, G.4.1), any real number of 1 or more;
    /// infinite when every contribution is known or zero.
    /// </summary>
    public double EffectiveDegreesOfFreedom
    {
        get
        {
            var combined = StandardUncertainty;
            if (combined == 0)
            {
                return double.PositiveInfinity;
            }

            // Shares of the combined uncertainty rather than fourth powers of metres, which could vanish.
            var weight = Components.Sum(c => Math.Pow(c.StandardUncertainty / combined, 4) / c.DegreesOfFreedom);
            return weight == 0 ? double.PositiveInfinity : Math.Max(1, 1 / weight);
        }
    }

    /// <summary>Expanded uncertainty: combined standard uncertainty times the Student t factor (JCGM 100, G.3.2).</summary>
    /// <param name="confidence">Above 0 and below 1; 0.95 where nothing else is said.</param>
    /// <returns>Half the width of the interval, in the unit of the result.</returns>
    public double ExpandedUncertainty(double confidence = CoverageFactor.UsualConfidence) =>
        StandardUncertainty * CoverageFactor.For(EffectiveDegreesOfFreedom, confidence);

    /// <summary>The same budget for a result that is this one times a constant (JCGM 100, 5.1.3: sensitivity coefficient).</summary>
    /// <param name="sensitivity">Change of the new result for a unit change of this one; its sign does not matter.</param>
    /// <returns>The scaled budget.</returns>
    public UncertaintyBudget Scaled(double sensitivity) => new(
        [.. Components.Select(c => new UncertaintyComponent(c.Source, c.StandardUncertainty * Math.Abs(sensitivity), c.DegreesOfFreedom))]);

    /// <summary>This budget with more contributions.</summary>
    /// <param name="more">The contributions to add, in the same unit.</param>
    /// <returns>The larger budget.</returns>
    public UncertaintyBudget With(params IEnumerable<UncertaintyComponent> more) => new([.. Components, .. more]);
}
