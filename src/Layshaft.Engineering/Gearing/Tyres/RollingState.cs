using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>How a tyre rolls apart from its size: slip, growth, wear. All are inputs; none is guessed.</summary>
public sealed record RollingState
{
    /// <summary>No slip, no growth, no wear.</summary>
    public static RollingState New { get; } = new();

    /// <summary>
    /// Share by which the driven wheels turn faster than the road passes at the limit of their grip, 0 to 0.3: road speed = wheel
    /// speed × (1 − slip). With less force there is less slip, in proportion (the linear range of the tyre).
    /// </summary>
    public double Slip { get; init; }

    /// <summary>
    /// Share by which the circumference has grown at <see cref="GrowthAt"/>, 0 to 0.15; in between it goes with the square
    /// of speed, as the centrifugal load does.
    /// </summary>
    public double Growth { get; init; }

    /// <summary>The speed at which <see cref="Growth"/> was measured.</summary>
    public Speed GrowthAt { get; init; } = Speed.FromMetersPerSecond(60);

    /// <summary>Tread worn away, as depth; 0 to 20 mm.</summary>
    public Length Wear { get; init; }
}
