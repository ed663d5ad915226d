using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>The speeds that a car was measured at in one corner.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Venue">The venue; null in an event, which has its own.</param>
/// <param name="Corner">The corner.</param>
/// <param name="CornerSpeed">Slowest speed in it; null to take it from elsewhere.</param>
/// <param name="ExitSpeed">Speed at which full throttle begins after it; null to take it from elsewhere.</param>
public sealed record CornerSpeeds(Origin Origin, string? Venue, string Corner, Speed? CornerSpeed, Speed? ExitSpeed) : IPlaced
{
    /// <summary>How it is written in a car's file.</summary>
    public static RecordShape<CornerSpeeds> OfCar { get; } = new("measured corner speeds", "Speeds of this car in one corner of a venue, as measured.", f => new CornerSpeeds(
        f.Origin,
        f.Required("venue", Scalars.Id.Like("brackwater"), "Venue: a file in venues/, without .yaml."),
        f.Required("corner", Scalars.Text, CornerMeaning),
        f.OptionalValue("corner_speed", Quantities.Speed.Like("78 km/h"), CornerSpeedMeaning),
        f.OptionalValue("exit_speed", Quantities.Speed.Like("92 km/h"), ExitSpeedMeaning)));

    /// <summary>How it is written in an event.</summary>
    public static RecordShape<CornerSpeeds> OfEvent { get; } = new("an event's corner speeds", "Speeds of the car in one corner at this event.", f => new CornerSpeeds(
        f.Origin,
        null,
        f.Required("corner", Scalars.Text, CornerMeaning),
        f.OptionalValue("corner_speed", Quantities.Speed.Like("78 km/h"), CornerSpeedMeaning),
        f.OptionalValue("exit_speed", Quantities.Speed.Like("92 km/h"), ExitSpeedMeaning)));

    private const string CornerMeaning = "The corner, by its name in the venue's file.";
    private const string CornerSpeedMeaning = "Slowest speed in it.";
    private const string ExitSpeedMeaning = "Speed at which full throttle begins after it.";
}
