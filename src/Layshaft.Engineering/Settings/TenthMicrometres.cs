using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>
/// Lengths as whole tenths of a micrometre, in which shim packs are added without rounding: a thousandth of an inch is 254 of them, a
/// hundredth of a millimetre 100. No gauge of the bench shows one.
/// </summary>
internal static class TenthMicrometres
{
    /// <summary>Longest pack that is searched: 20 mm.</summary>
    public const int Most = 200_000;

    /// <summary>How many are a micrometre.</summary>
    public const int PerMicrometre = 10;

    // A depth or height is far longer than the pack that sets it.
    private const int MostMeasured = 20_000_000;

    // So that a length that is whole but for the error of its conversion counts as whole.
    private const double Slack = 1e-6;

    /// <summary>A shim or pack to the nearest tenth of a micrometre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite, or longer than any shim pack.</exception>
    public static int Nearest(Length length, string what) => Within(length, Most, what, n => Math.Round(n, MidpointRounding.AwayFromZero));

    /// <summary>A measured value to the nearest tenth of a micrometre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite, or more than 2 m.</exception>
    public static int Measured(Length length, string what) => Within(length, MostMeasured, what, n => Math.Round(n, MidpointRounding.AwayFromZero));

    /// <summary>The least that is not below a length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite, or more than 2 m.</exception>
    public static int AtLeast(Length length, string what) => Within(length, MostMeasured, what, n => Math.Ceiling(n - Slack));

    /// <summary>The greatest that is not above a length.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite, or more than 2 m.</exception>
    public static int AtMost(Length length, string what) => Within(length, MostMeasured, what, n => Math.Floor(n + Slack));

    /// <summary>So many as a length in millimetres.</summary>
    public static Length Of(int tenths) => Length.FromMillimeters(tenths / 10_000.0);

    private static int Within(Length length, int most, string what, Func<double, double> whole)
    {
        var tenths = length.Micrometers * PerMicrometre;
        return double.IsFinite(tenths) && Math.Abs(tenths) <= most
            ? (int)whole(tenths)
            : throw new ArgumentOutOfRangeException(what, length, $"the {what} must be within {most / 10_000} mm");
    }
}
