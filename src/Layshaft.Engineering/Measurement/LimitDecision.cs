using MathNet.Numerics.Distributions;

namespace Layshaft.Engineering.Measurement;

/// <summary>
/// Decision against one limit with a guard band as wide as the expanded uncertainty on either side of it (ISO 14253-1,
/// as first published; more careful than the 1.65 standard uncertainties of its 2017 edition).
/// </summary>
/// <param name="Conformity">Inside, too close to call, or outside.</param>
/// <param name="Margin">Distance from the value to the limit: above 0 on the good side, in the unit of the value.</param>
/// <param name="GuardBand">Width of the guard band, 0 or more, in the unit of the value.</param>
public sealed record LimitDecision(Conformity Conformity, double Margin, double GuardBand)
{
    /// <summary>Decides. A value exactly on an edge of the guard band counts as proven; a limit itself is allowed.</summary>
    /// <param name="value">Measured value, finite.</param>
    /// <param name="expandedUncertainty">Expanded uncertainty in the same unit, 0 or more.</param>
    /// <param name="limit">The limit in the same unit, finite.</param>
    /// <param name="sense">Which side is good.</param>
    /// <param name="resolution">Smallest step of the gauge in the same unit, 0 or more: a value short of proof by half a step or less counts as proven.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the uncertainty is negative.</exception>
    public static LimitDecision Of(double value, double expandedUncertainty, double limit, LimitSense sense, double resolution = 0)
    {
        if (!double.IsFinite(value) || !double.IsFinite(limit))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "value and limit must be finite numbers");
        }

        ArgumentOutOfRangeException.ThrowIfNegative(resolution);
        if (!double.IsFinite(expandedUncertainty) || expandedUncertainty < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(expandedUncertainty), expandedUncertainty, "an uncertainty is 0 or more");
        }

        var margin = sense == LimitSense.Upper ? limit - value : value - limit;

        // Decimal figures such as 19.94 have no exact binary form; rounding alone may not turn an edge into a close call.
        var rounding = 1e-14 * Math.Max(Math.Abs(value), Math.Abs(limit));
        var proof = expandedUncertainty - (resolution / 2) - rounding;
        var conformity = margin >= proof ? Conformity.Inside
            : margin <= -proof ? Conformity.Outside
            : Conformity.TooCloseToCall;
        return new LimitDecision(conformity, margin, expandedUncertainty);
    }

    /// <summary>Probability that the true value keeps the limit, for a normally distributed error (JCGM 106:2012, 7.2).</summary>
    /// <param name="value">Measured value.</param>
    /// <param name="standardUncertainty">Standard uncertainty in the same unit, above 0.</param>
    /// <param name="limit">The limit in the same unit.</param>
    /// <param name="sense">Which side is good.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is not above 0.</exception>
    public static double ConformanceProbability(double value, double standardUncertainty, double limit, LimitSense sense)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardUncertainty);
        return Normal.CDF(0, standardUncertainty, sense == LimitSense.Upper ? limit - value : value - limit);
    }
}
