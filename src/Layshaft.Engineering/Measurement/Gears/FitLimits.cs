namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>Where a pair on a fixed centre distance becomes unreasonable; common practice, no source.</summary>
public sealed record FitLimits
{
    /// <summary>Least contact ratio; 1.2.</summary>
    public double LeastContactRatio { get; init; } = 1.2;

    /// <summary>Least tooth thickness at the tip as a multiple of the module; 0.2.</summary>
    public double LeastTipThickness { get; init; } = 0.2;

    /// <summary>Greatest profile shift coefficient of one gear, up or down; 1.</summary>
    public double GreatestShift { get; init; } = 1;
}
