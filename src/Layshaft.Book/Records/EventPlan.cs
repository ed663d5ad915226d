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
    Teeth? DropPair,
    Teeth? FinalDrive,
    string? Note) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<EventPlan> Shape { get; } = new("an event", "One meeting at a venue, with its conditions.", f => new EventPlan(
        f.Origin,
        f.Required("venue", Scalars.Id, "The venue: a file in venues/."),
        f.OptionalValue("on", Scalars.Date, "When."),
        f.Optional("name", Scalars.Text, "What the meeting is called."),
        f.Or("laps", Scalars.Count, 1, "Laps or runs in all, with practice."),
        f.OptionalValue("temperature", Quantities.Temperature, "Of the air."),
        f.OptionalValue("pressure", Quantities.Pressure, "Of the air at the venue; left out, it follows from the altitude."),
        f.OptionalValue("humidity", Scalars.Part, "Relative humidity of the air."),
        f.OptionalValue("drop_pair", Scalars.Teeth, "Drop gears fitted for it."),
        f.OptionalValue("final_drive", Scalars.FinalDrive, "Final drive fitted for it."),
        f.Optional("note", Scalars.Text, "Words to go with it.")));
}
