namespace Layshaft.Engineering.Settings;

/// <summary>What a builder sets or checks.</summary>
public enum SettingKind
{
    /// <summary>Axial play of a shaft or gear.</summary>
    EndFloat,

    /// <summary>Squeeze on a pair of bearings, as an interference or a force.</summary>
    Preload,

    /// <summary>Torque that turns a preloaded shaft.</summary>
    DragTorque,

    /// <summary>Torque that turns one output shaft of a plate differential while the other is held.</summary>
    Breakaway,

    /// <summary>Play between meshing teeth.</summary>
    Backlash,

    /// <summary>Swing of a surface over one turn.</summary>
    RunOut,

    /// <summary>Torque that a fastener was tightened to; the value asked for comes from the maker's manual.</summary>
    TighteningTorque,

    /// <summary>Thickness of a shim pack.</summary>
    ShimPack,

    /// <summary>Depth, height or place of a part.</summary>
    Position,
}
