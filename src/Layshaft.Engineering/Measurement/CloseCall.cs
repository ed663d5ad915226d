namespace Layshaft.Engineering.Measurement;

/// <summary>What a shop does with a part whose value is too close to its limit to call.</summary>
public enum CloseCall
{
    /// <summary>Measure again with less uncertainty; until then the part counts as one to renew.</summary>
    MeasureAgain,

    /// <summary>Renew it without more ado.</summary>
    Renew,

    /// <summary>Let it go back and watch it: the shop takes the risk knowingly.</summary>
    Watch,
}
