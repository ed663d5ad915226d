using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>One meeting at a venue, with its conditions.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Venue">The venue.</param>
/// <param name="On">When.</param>
/// <param name="Name">What the meeting is called.</param>
/// <param name="Laps">Laps (or runs) in all.</param>
/// <param name="Temperature">Of the air.</param>
/// <param name="Pressure">Of the air at the venue; null to take it from the altitude.</param>
/// <param name="Humidity">Relative, as a fraction.</param>
/// <param name="Wind">Wind speed near the ground; null for calm.</param>
/// <param name="WindFrom">The compass direction it comes from; null to take it as a headwind everywhere.</param>
/// <param name="Corners">Corner speeds at this event.</param>
/// <param name="DropPair">Drop gears fitted for it.</param>
/// <param name="FinalDrive">Final drive fitted for it.</param>
/// <param name="Note">Words to go with it.</param>
public sealed record EventPlan(
    Origin Origin,
    string Venue,
    DateOnly? On,
    string? Name,
    int Laps,
    Temperature? Temperature,
    Pressure? Pressure,
    double? Humidity,
    Speed? Wind,
    Angle? WindFrom,
    IReadOnlyList<CornerSpeeds> Corners,
    Teeth? DropPair,
    Teeth? FinalDrive,
    string? Note) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<EventPlan> Shape { get; } = new("an event", "One event at a venue, with its conditions.", f => new EventPlan(
        f.Origin,
        f.Required("venue", Scalars.Id.Like("brackwater"), "Venue: a file in venues/, without .yaml."),
        f.OptionalValue("on", Scalars.Date, "Date."),
        f.Optional("name", Scalars.Text, "Name of the event."),
        f.Or("laps", Scalars.Count.Like("48"), 1, "Total laps or runs, including practice. Default: 1."),
        f.OptionalValue("temperature", Quantities.Temperature, "Air temperature."),
        f.OptionalValue("pressure", Quantities.Pressure, "Air pressure at the venue. Default: calculated from the altitude."),
        f.OptionalValue("humidity", Scalars.Part.Like("60 %"), "Relative humidity."),
        f.OptionalValue("wind", Quantities.Speed.Like("18 km/h"), "Wind speed near the ground. Default: calm."),
        f.OptionalValue("wind_from", Quantities.Compass.Like("240°"), "Compass direction the wind comes from. Without it the wind is a headwind on every straight."),
        f.List("corners", CornerSpeeds.OfEvent, "Corner speeds expected or measured at this event. They take precedence over those of car and venue."),
        f.OptionalValue("drop_pair", Scalars.Teeth, "Drop gears fitted for the event, driven/driver."),
        f.OptionalValue("final_drive", Scalars.FinalDrive, "Final drive fitted for the event, crown wheel/pinion."),
        f.Optional("note", Scalars.Text, "Note to the customer.")));
}
