namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>Why a pair of tooth numbers does not suit a fixed centre distance.</summary>
public enum FitTrouble
{
    /// <summary>A rack cutter would undercut a root.</summary>
    Undercut,

    /// <summary>A tooth is pointed, or too thin at its tip.</summary>
    PointedTeeth,

    /// <summary>Too few teeth share the load.</summary>
    LowContactRatio,

    /// <summary>A tip would dig into the mating root.</summary>
    Interference,

    /// <summary>The shift needed lies beyond what any cutter makes.</summary>
    ExtremeShift,
}
