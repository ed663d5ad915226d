using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>Thickness of a pack, from its shims.</summary>
public static class PackThickness
{
    /// <summary>The thickest shim that packs are reckoned with, 20 mm: longer than any pack, so a slip of the pen or of its unit.</summary>
    public static Length ThickestShim => TenthMicrometres.Of(TenthMicrometres.Most);

    /// <summary>Sum of the shims, each taken to the nearest tenth of a micrometre.</summary>
    /// <param name="shims">Thicknesses; none give 0.</param>
    /// <returns>The sum in millimetres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A shim is thicker than <see cref="ThickestShim"/>.</exception>
    public static Length Of(IEnumerable<Length> shims)
    {
        ArgumentNullException.ThrowIfNull(shims);
        return TenthMicrometres.Of(shims.Sum(shim => TenthMicrometres.Nearest(shim, "shim")));
    }

    /// <summary>Standard uncertainty of the sum where each shim may be off by ±t with every value between equally likely: √n·t/√3.</summary>
    /// <param name="shims">How many shims, 0 or more.</param>
    /// <param name="tolerance">±t of one shim, 0 or more.</param>
    /// <returns>The standard uncertainty.</returns>
    public static Length StandardUncertainty(int shims, Length tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(shims);
        return tolerance * Math.Sqrt(shims / 3.0);
    }
}
