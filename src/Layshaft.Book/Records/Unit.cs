using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;

namespace Layshaft.Book.Records;

/// <summary>One gearbox with a serial number: file <c>units/ID.yaml</c>.</summary>
/// <param name="Id">The file's name: the unit's number.</param>
/// <param name="Origin">Where it stands.</param>
/// <param name="Gearbox">Its type.</param>
/// <param name="Serial">Stamped on the case.</param>
/// <param name="RatioSet">The gears in it; null for a unit without gears to choose.</param>
/// <param name="Owners">First owner first.</param>
/// <param name="Car">The car that it is in.</param>
/// <param name="InService">Day it first ran, or came to the shop's knowledge.</param>
/// <param name="UseAtStart">What it had run by then.</param>
/// <param name="UseCountedIn">What its running is counted in; null for the shop's choice.</param>
/// <param name="Fitted">Parts known when the book begins.</param>
/// <param name="DropPair">Drop gears fitted when the book begins.</param>
/// <param name="FinalDrive">Final drive fitted when the book begins; null for a unit without one.</param>
/// <param name="LinkRenewed">How often the customer's link was withdrawn and renewed.</param>
/// <param name="InternalNotes">For the shop only.</param>
public sealed record Unit(
    string Id,
    Origin Origin,
    string Gearbox,
    string Serial,
    string? RatioSet,
    IReadOnlyList<Ownership> Owners,
    string? Car,
    DateOnly InService,
    Use UseAtStart,
    UseUnit? UseCountedIn,
    IReadOnlyList<FittedPart> Fitted,
    Teeth? DropPair,
    Teeth? FinalDrive,
    int LinkRenewed,
    string? InternalNotes) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Unit> Shape { get; } = new("a unit", "One gearbox with a serial number.", f => new Unit(
        string.Empty,
        f.Origin,
        f.Required("gearbox", Scalars.Id.Like("ostrel-t6"), "Gearbox type: a file in gearboxes/, without .yaml."),
        f.Required("serial", Scalars.Text, "Serial number on the case."),
        f.Optional("ratio_set", Scalars.Id.Like("standard"), "Fitted ratio set: its id in the gearbox file. A gearbox needs it."),
        f.Required("owners", new ListShape<Ownership>(Ownership.Shape, atLeast: 1), "Owners, first owner first."),
        f.Optional("car", Scalars.Id.Like("saloon-44"), "Car it is fitted to: a file in cars/, without .yaml."),
        f.Required("in_service", Scalars.Date, "Date of first use, or first received by the shop."),
        f.Required("use_at_start", Scalars.Use.Like("18.5 h"), "Total usage on that date."),
        f.OptionalValue("use_counted_in", Shop.UseWords, "Usage unit. Default: use_counted_in in shop.yaml."),
        f.List("fitted", FittedPart.Shape, "Parts with their own serial or usage when the book begins. All others count from in_service."),
        f.OptionalValue("drop_pair", Scalars.Teeth, "Drop gears fitted when the book begins, driven/driver."),
        f.OptionalValue("final_drive", Scalars.FinalDrive, "Final drive fitted when the book begins, crown wheel/pinion. A gearbox and an axle need it."),
        f.Or("link_renewed", Scalars.CountOrNone.Like("1"), 0, "Increase by one to withdraw the customer's link and create a new one. Default: 0."),
        f.Optional("internal_notes", Scalars.Text, "Internal note; never on a customer's page.")));

    /// <summary>Who owned it on a day; the first owner before the first day.</summary>
    public Ownership OwnerOn(DateOnly day) => Owners.LastOrDefault(o => o.From <= day) ?? Owners[0];
}

/// <summary>Who owns a unit from a day on.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Customer">Whose it is.</param>
/// <param name="From">From this day.</param>
/// <param name="Kit">The owner's own gears for the unit; null for none.</param>
public sealed record Ownership(Origin Origin, string Customer, DateOnly From, Kit? Kit = null) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Ownership> Shape { get; } = new("an owner", "Owner of a unit from a date on.", f => new Ownership(
        f.Origin,
        f.Required("customer", Scalars.Id.Like("penhallow"), "Customer: a file in customers/, without .yaml."),
        f.Required("from", Scalars.Date, "First day of ownership."),
        f.Optional("kit", Records.Kit.Shape, "The owner's own gears for this unit, besides the fitted ones.")));
}

/// <summary>A part in a unit when the book begins.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Part">Which part of the gearbox.</param>
/// <param name="Serial">Serial or batch, where the shop keeps one.</param>
/// <param name="Use">What the part had run by the unit's first day.</param>
public sealed record FittedPart(Origin Origin, string Part, string? Serial, Use? Use) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<FittedPart> Shape { get; } = new("a fitted part", "A part in a unit when the book begins.", f => new FittedPart(
        f.Origin,
        f.Required("part", Scalars.Id, "Part: its id in the gearbox file."),
        f.Optional("serial", Scalars.Text, "Serial or batch."),
        f.OptionalValue("use", Scalars.Use.Like("4 h"), "Usage of the part on the unit's in_service date.")));
}
