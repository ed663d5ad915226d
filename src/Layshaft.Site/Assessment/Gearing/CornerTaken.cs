using Layshaft.Book.Records;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>What the speeds of a corner rest on.</summary>
public enum CornerSource
{
    /// <summary>The venue's own speeds, the same for every car.</summary>
    Venue,

    /// <summary>The corner's radius with the car's grip and downforce.</summary>
    Radius,

    /// <summary>Measured in this car at this venue.</summary>
    Car,

    /// <summary>Given for this event.</summary>
    Event,

    /// <summary>The radius lets the car go faster than it gets there, so it is flat through: no corner.</summary>
    Flat,
}

/// <summary>The corner at the end of a straight as one car takes it.</summary>
/// <param name="Corner">The corner's name.</param>
/// <param name="Slowest">Slowest speed in it; null at a finish line and where it is flat.</param>
/// <param name="Exit">Speed at which full throttle begins after it; null at a finish line and where it is flat.</param>
/// <param name="Source">What the speeds rest on.</param>
public sealed record CornerTaken(string Corner, Speed? Slowest, Speed? Exit, CornerSource Source)
{
    /// <summary>For a flat corner, the greatest speed at which the car gets there.</summary>
    public Speed? Reached { get; init; }

    /// <summary>For a flat corner, the speed that its radius would allow.</summary>
    public Speed? Steady { get; init; }

    /// <summary>Every corner of a venue, in the order of the straights that lead to them.</summary>
    /// <param name="venue">The venue.</param>
    /// <param name="setup">The car.</param>
    /// <param name="plan">The event; null for none.</param>
    public static IReadOnlyList<CornerTaken> All(Venue venue, CarSetup setup, EventPlan? plan)
    {
        ArgumentNullException.ThrowIfNull(venue);
        ArgumentNullException.ThrowIfNull(setup);
        return [.. venue.Straights.Select((straight, i) => Of(venue, straight, i < venue.Straights.Count - 1 ? venue.Straights[i + 1].ExitSpeed : venue.Kind == VenueKind.Circuit ? venue.Straights[0].ExitSpeed : null, setup, plan))];
    }

    private static CornerTaken Of(Venue venue, Straight straight, Speed? exit, CarSetup setup, EventPlan? plan)
    {
        if (straight.CornerSpeed is not { } slowest)
        {
            return new CornerTaken(straight.Corner, null, null, CornerSource.Venue);
        }

        var source = CornerSource.Venue;
        if (straight.CornerRadius is { } radius && Eng.AirState.Standard(venue.Altitude).Value is { } air)
        {
            var steady = Eng.CorneringSpeed.Steady(setup.Vehicle, radius, air);
            (exit, slowest, source) = (exit is { } before ? before * (steady / slowest) : exit, steady, CornerSource.Radius);
        }

        var ofCar = setup.Car.Corners.FirstOrDefault(c => c.Venue == venue.Id && c.Corner == straight.Corner);
        var ofEvent = plan?.Corners.FirstOrDefault(c => c.Corner == straight.Corner);
        foreach (var (measured, from) in new[] { (ofCar, CornerSource.Car), (ofEvent, CornerSource.Event) })
        {
            if (measured is not null)
            {
                (slowest, exit, source) = (measured.CornerSpeed ?? slowest, measured.ExitSpeed ?? exit, from);
            }
        }

        return new CornerTaken(straight.Corner, slowest, exit is { } speed ? UnitMath.Max(speed, slowest) : exit, source);
    }
}
