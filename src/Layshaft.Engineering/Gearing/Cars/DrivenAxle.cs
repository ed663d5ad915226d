namespace Layshaft.Engineering.Gearing;

/// <summary>Which wheels the engine drives.</summary>
public enum DrivenAxle
{
    /// <summary>The rear wheels: they gain load under power.</summary>
    Rear,

    /// <summary>The front wheels: they lose load under power.</summary>
    Front,

    /// <summary>All wheels, each up to its grip.</summary>
    Both,
}
