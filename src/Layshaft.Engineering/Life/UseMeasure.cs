namespace Layshaft.Engineering.Life;

/// <summary>What a unit's use is counted in. Uses in different measures are never added.</summary>
public enum UseMeasure
{
    /// <summary>Running hours.</summary>
    Hours,

    /// <summary>Kilometres driven.</summary>
    Kilometres,

    /// <summary>Events (meetings) taken part in.</summary>
    Events,
}
