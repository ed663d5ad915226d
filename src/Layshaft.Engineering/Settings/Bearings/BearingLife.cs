using UnitsNet;

namespace Layshaft.Engineering.Settings.Bearings;

/// <summary>Basic rating life of rolling bearings (ISO 281:2007): what nine of ten bearings reach in clean, well oiled use.</summary>
public static class BearingLife
{
    /// <summary>Life exponent of ball bearings, 3.</summary>
    public const double BallExponent = 3;

    /// <summary>Life exponent of roller bearings, 10/3.</summary>
    public const double RollerExponent = 10.0 / 3;

    /// <summary>L10 = (C/P)^p in revolutions.</summary>
    /// <param name="dynamicRating">Basic dynamic load rating C from the bearing maker, above 0.</param>
    /// <param name="equivalentLoad">Equivalent dynamic load P, above 0.</param>
    /// <param name="exponent"><see cref="BallExponent"/> or <see cref="RollerExponent"/>.</param>
    /// <returns>Revolutions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A load is not above 0.</exception>
    public static double L10Revolutions(Force dynamicRating, Force equivalentLoad, double exponent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dynamicRating.Newtons, nameof(dynamicRating));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(equivalentLoad.Newtons, nameof(equivalentLoad));
        return 1e6 * Math.Pow(dynamicRating / equivalentLoad, exponent);
    }

    /// <summary>L10 as running time at a constant speed.</summary>
    /// <param name="dynamicRating">Basic dynamic load rating C from the bearing maker, above 0.</param>
    /// <param name="equivalentLoad">Equivalent dynamic load P, above 0.</param>
    /// <param name="exponent"><see cref="BallExponent"/> or <see cref="RollerExponent"/>.</param>
    /// <param name="speed">Speed of one ring against the other, above 0.</param>
    /// <returns>Running time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A load or the speed is not above 0.</exception>
    public static Duration L10(Force dynamicRating, Force equivalentLoad, double exponent, RotationalSpeed speed)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(speed.RevolutionsPerMinute, nameof(speed));
        return Duration.FromHours(L10Revolutions(dynamicRating, equivalentLoad, exponent) / speed.RevolutionsPerMinute / 60);
    }

    /// <summary>Equivalent dynamic load P = X·F_r + Y·F_a.</summary>
    /// <param name="radial">Radial load, 0 or more.</param>
    /// <param name="axial">Axial load, 0 or more.</param>
    /// <param name="radialFactor">X from the bearing maker.</param>
    /// <param name="axialFactor">Y from the bearing maker.</param>
    /// <returns>The equivalent load.</returns>
    public static Force EquivalentLoad(Force radial, Force axial, double radialFactor, double axialFactor) =>
        (radialFactor * radial) + (axialFactor * axial);
}
