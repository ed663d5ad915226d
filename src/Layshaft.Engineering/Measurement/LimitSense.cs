namespace Layshaft.Engineering.Measurement;

/// <summary>On which side of a limit a value must stay.</summary>
public enum LimitSense
{
    /// <summary>The value may not rise above the limit: a clearance or a bore that wear opens.</summary>
    Upper,

    /// <summary>The value may not fall below the limit: a thickness or a tooth span that wear takes away.</summary>
    Lower,
}
