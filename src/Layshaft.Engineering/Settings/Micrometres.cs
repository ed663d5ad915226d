using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>Lengths as whole micrometres, in which shim packs are added without rounding.</summary>
internal static class Micrometres
{
    /// <summary>Longest pack or float that is looked at: 20 mm.</summary>
    public const int Most = 20_000;

    /// <summary>A length to the nearest micrometre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite, or longer than any shim pack.</exception>
    public static int Nearest(Length length, string what)
    {
        var um = length.Micrometers;
        return double.IsFinite(um) && Math.Abs(um) <= Most
            ? (int)Math.Round(um, MidpointRounding.AwayFromZero)
            : throw new ArgumentOutOfRangeException(what, length, $"the {what} must be within 20 mm");
    }

    /// <summary>A length that is a whole number of micrometres.</summary>
    /// <exception cref="ArgumentException">It is not whole.</exception>
    public static int Exact(Length length, string what)
    {
        var um = Nearest(length, what);
        return Math.Abs(length.Micrometers - um) < 1e-3
            ? um
            : throw new ArgumentException($"the {what} {length} is not a whole number of micrometres: write it to three decimal places of a millimetre", what);
    }

    /// <summary>Whole micrometres as a length in millimetres.</summary>
    public static Length Of(int um) => Length.FromMillimeters(um / 1000.0);
}
