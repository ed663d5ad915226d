namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>How a pin sits in a tooth space.</summary>
public enum PinFit
{
    /// <summary>It touches both flanks on the involute and stands out over the tips.</summary>
    Good,

    /// <summary>It is so small that it rests on the root.</summary>
    RestsOnRoot,

    /// <summary>It touches below the involute, in the root fillet.</summary>
    TouchesFillet,

    /// <summary>It is so large that it touches the tooth tips.</summary>
    TouchesTip,

    /// <summary>It lies below the tips: anvils would rest on the teeth.</summary>
    BelowTip,
}
