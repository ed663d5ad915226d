namespace Layshaft.Engineering.Settings;

/// <summary>What a thicker shim pack does to the value that is set.</summary>
public enum ShimEffect
{
    /// <summary>More shim makes it smaller: end float behind a bearing, play of a stack that the pack closes.</summary>
    Reduces,

    /// <summary>More shim makes it greater: preload of a stack that the pack squeezes, backlash where it moves a gear out of mesh.</summary>
    Increases,
}
