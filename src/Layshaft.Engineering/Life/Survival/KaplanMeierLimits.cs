namespace Layshaft.Engineering.Life;

/// <summary>How limits about a Kaplan–Meier curve are formed from Greenwood's variance.</summary>
public enum KaplanMeierLimits
{
    /// <summary>On the scale of S itself; runs out of 0..1 near the ends and is cut there.</summary>
    Plain,

    /// <summary>On the scale of log S.</summary>
    Log,

    /// <summary>On the scale of log(−log S); stays within 0..1, the best with few units.</summary>
    LogLog,
}
