namespace Layshaft.Engineering.Life;

/// <summary>
/// A two-sided interval at a stated level. A side may be open: the data cannot exclude any value on it, which is
/// said rather than filled with a number.
/// </summary>
/// <param name="Level">Confidence or prediction level, between 0 and 1; both sides together (0.95 leaves 2.5 % outside each end).</param>
/// <param name="Lower">Lower end, or <c>null</c> when it is open.</param>
/// <param name="Upper">Upper end, or <c>null</c> when it is open.</param>
public readonly record struct Bounds(double Level, double? Lower, double? Upper)
{
    /// <summary>Whether nothing can be said on the low side.</summary>
    public bool IsOpenBelow => Lower is null;

    /// <summary>Whether nothing can be said on the high side.</summary>
    public bool IsOpenAbove => Upper is null;

    /// <summary>Checks a level.</summary>
    /// <param name="level">The level to check.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not strictly between 0 and 1.</exception>
    internal static void CheckLevel(double level)
    {
        if (!(level > 0 && level < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(level), level, "A level lies strictly between 0 and 1, for example 0.95.");
        }
    }
}
