using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Settings;

/// <summary>Decision of a value against a band that may be open on one side (ISO 14253-1).</summary>
public static class BandDecision
{
    /// <summary>Outside when proven beyond either end, inside when proven within both, otherwise too close to call.</summary>
    /// <param name="value">The value, finite.</param>
    /// <param name="expandedUncertainty">Its expanded uncertainty in the same unit, 0 or more.</param>
    /// <param name="low">Lower end in the same unit; <see langword="null"/> for none.</param>
    /// <param name="high">Upper end in the same unit; <see langword="null"/> for none.</param>
    /// <param name="resolution">Smallest step of the gauge in the same unit, 0 or more.</param>
    /// <returns>The decision.</returns>
    public static Conformity Of(double value, double expandedUncertainty, double? low, double? high, double resolution = 0)
    {
        var below = low is { } l ? LimitDecision.Of(value, expandedUncertainty, l, LimitSense.Lower, resolution).Conformity : Conformity.Inside;
        var above = high is { } h ? LimitDecision.Of(value, expandedUncertainty, h, LimitSense.Upper, resolution).Conformity : Conformity.Inside;
        return below > above ? below : above;
    }
}
