namespace Layshaft.Engineering.Settings;

/// <summary>How a setting came out.</summary>
public enum SettingStatus
{
    /// <summary>Proven inside its band.</summary>
    Inside,

    /// <summary>An end of the band lies within the uncertainty of the measurement.</summary>
    TooCloseToCall,

    /// <summary>Proven outside its band.</summary>
    Outside,

    /// <summary>Asked for and not recorded.</summary>
    NotRecorded,

    /// <summary>Recorded, and no band is stated for it.</summary>
    NoBand,
}
