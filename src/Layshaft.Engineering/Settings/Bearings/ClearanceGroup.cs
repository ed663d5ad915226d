namespace Layshaft.Engineering.Settings.Bearings;

/// <summary>Internal clearance group of a rolling bearing, from tight to loose (designations of ISO 5753-1).</summary>
public enum ClearanceGroup
{
    /// <summary>Less than normal.</summary>
    C2,

    /// <summary>Normal; not marked on the bearing.</summary>
    Normal,

    /// <summary>More than normal; usual in gearboxes with tight fits.</summary>
    C3,

    /// <summary>More than C3.</summary>
    C4,

    /// <summary>More than C4.</summary>
    C5,
}
