using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One straight of a venue with the corner before it and the speed to brake down to at its end.</summary>
public sealed record Straight
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Length from corner exit to corner entry, 5 to 20 000 m.</summary>
    public required Length Length { get; init; }

    /// <summary>Speed at the corner exit, 0 (standing start) to 150 m/s.</summary>
    public required Speed StartSpeed { get; init; }

    /// <summary>Speed at the corner entry at the end, 0 to 150 m/s.</summary>
    public required Speed EndSpeed { get; init; }

    /// <summary>Deceleration under braking, 1 to 60 m/s²; not used when <see cref="BrakingDistance"/> is given.</summary>
    public Acceleration Braking { get; init; } = Acceleration.FromMetersPerSecondSquared(9.80665);

    /// <summary>Distance before the end at which the brakes come on; null when the deceleration decides.</summary>
    public Length? BrakingDistance { get; init; }

    /// <summary>Rise over distance travelled on the flat (tangent), uphill positive, −0.4 to 0.4.</summary>
    public double Grade { get; init; }

    /// <summary>Compass direction of travel; null when not known.</summary>
    public Angle? Heading { get; init; }

    /// <summary>Lowest speed in the corner before the straight; null when it is the speed at the corner exit.</summary>
    public Speed? CornerMinimum { get; init; }
}
