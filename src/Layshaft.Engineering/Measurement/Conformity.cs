namespace Layshaft.Engineering.Measurement;

/// <summary>Where a measured value stands to a limit, its uncertainty considered (ISO 14253-1).</summary>
public enum Conformity
{
    /// <summary>Proven inside: the whole uncertainty interval keeps the limit.</summary>
    Inside,

    /// <summary>The limit lies within the uncertainty interval: measure again with less uncertainty, or renew.</summary>
    TooCloseToCall,

    /// <summary>Proven outside: the whole uncertainty interval breaks the limit.</summary>
    Outside,
}
