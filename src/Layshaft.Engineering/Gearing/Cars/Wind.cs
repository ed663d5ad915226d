using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>The wind over a venue. Immutable.</summary>
/// <param name="Speed">Wind speed near the ground, 0 to 40 m/s; a negative speed is taken as a tail wind.</param>
/// <param name="From">
/// The compass direction that it comes from; null when it is to be taken as a headwind on every straight, the worst case.
/// </param>
public sealed record Wind(Speed Speed, Angle? From = null)
{
    /// <summary>The part of the wind that blows against a car.</summary>
    /// <param name="heading">The compass direction in which the car drives; null when not known: all of it counts.</param>
    public Speed Against(Angle? heading) => From is { } from && heading is { } towards
        ? Speed * Math.Cos((from - towards).Radians)
        : Speed;
}
