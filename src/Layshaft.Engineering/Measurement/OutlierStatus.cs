namespace Layshaft.Engineering.Measurement;

/// <summary>What the outlier test says about the most extreme reading (terms of ISO 5725-2:1994, 7.3.2).</summary>
public enum OutlierStatus
{
    /// <summary>Fewer than three readings, or readings without scatter: there is nothing to test.</summary>
    NotTested,

    /// <summary>The test finds no fault: statistic at or below the 5 % critical value.</summary>
    Unremarkable,

    /// <summary>Above the 5 % critical value and at or below the 1 % one: look at it again.</summary>
    Straggler,

    /// <summary>Above the 1 % critical value: likely a slip of the hand or the pen.</summary>
    Outlier,
}
