using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>A difference in time with what it can resolve.</summary>
/// <param name="Value">The difference; negative if the first of the two is faster.</param>
/// <param name="Expanded">Its expanded uncertainty, coverage factor 2 (JCGM 100:2008, 6.2.1).</param>
public sealed record TimeDifference(Duration Value, Duration Expanded)
{
    /// <summary>Whether the difference is larger than its uncertainty, both as printed; if not, neither of the two is better.</summary>
    public bool IsResolved => Math.Round(Math.Abs(Value.Seconds), Decimals) > Math.Round(Expanded.Seconds, Decimals);

    /// <summary>
    /// Decimals of a second that may be printed: hundredths for an uncertainty below 0.3 s, tenths below 3 s, else none. So the
    /// uncertainty has at most two significant digits (JCGM 100:2008, 7.2.6), and nothing is finer than hundredths.
    /// </summary>
    public int Decimals => Expanded.Seconds switch { < 0.3 => 2, < 3 => 1, _ => 0 };
}
