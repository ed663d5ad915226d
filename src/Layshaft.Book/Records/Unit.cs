using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;

namespace Layshaft.Book.Records;

/// <summary>One gearbox with a serial number: file <c>units/ID.yaml</c>.</summary>
/// <param name="Id">The file's name: the unit's number.</param>
/// <param name="Origin">Where it stands.</param>
/// <param name="Gearbox">Its type.</param>
/// <param name="Serial">Stamped on the case.</param>
/// <param name="RatioSet">The gears in it.</param>
/// <param name="Owners">First owner first.</param>
/// <param name="Car">The car that it is in.</param>
/// <param name="InService">Day it first ran, or came to the shop's knowledge.</param>
/// <param name="UseAtStart">What it had run by then.</param>
/// <param name="UseCountedIn">What its running is counted in; null for the shop's choice.</param>
/// <param name="Fitted">Parts known when the book begins.</param>
/// <param name="DropPair">Drop gears fitted when the book begins.</param>
/// <param name="FinalDrive">Final drive fitted when the book begins.</param>
/// <param name="LinkRenewed">How often the customer's link was withdrawn and renewed.</param>
/// <param name="InternalNotes">For the shop only.</param>
public sealed record Unit(
    string Id,
    Origin Origin,
    string Gearbox,
    string Serial,
    string RatioSet,
    IReadOnlyList<Ownership> Owners,
    string? Car,
    DateOnly InService,
    Use UseAtStart,
    UseUnit? UseCountedIn,
    IReadOnlyList<FittedPart> Fitted,
    Teeth? DropPair,
    Teeth FinalDrive,
    int LinkRenewed,
    string? InternalNotes) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Unit> Shape { get; } = new("a unit", "One gearbox with a serial number.", f => new Unit(
        string.Empty,
        f.Origin,
        f.Required("gearbox", Scalars.Id, "Its type: a file in gearboxes/."),
        f.Required("serial", Scalars.Text, "Stamped on the case."),
        f.Required("ratio_set", Scalars.Id, "The set of gears in it."),
        f.Required("owners", new ListShape<Ownership>(Ownership.Shape, atLeast: 1), "Its owners, first owner first."),
        f.Optional("car", Scalars.Id, "The car that it is in: a file in cars/."),
        f.Required("in_service", Scalars.Date, "Day it first ran, or first came to the shop."),
        f.Required("use_at_start", Scalars.Use, "What it had run by then."),
        f.OptionalValue("use_counted_in", Shop.UseWords, "What its running is counted in, where it differs from the shop's choice."),
        f.List("fitted", FittedPart.Shape, "Parts with a serial or with hours of their own when the book begins; all others count from in_service."),
        f.OptionalValue("drop_pair", Scalars.Teeth, "Drop gears fitted when the book begins."),
        f.Required("final_drive", Scalars.FinalDrive, "Final drive fitted when the book begins."),
        f.Or("link_renewed", Scalars.CountOrNone, 0, "Raise this by one to withdraw the customer's link and make a new one."),
        f.Optional("internal_notes", Scalars.Text, "For the shop only; never on a customer's page.")));

    /// <summary>Who owned it on a day; the first owner before the first day.</summary>
    public Ownership OwnerOn(DateOnly day) => Owners.LastOrDefault(o => o.From <= day) ?? Owners[0];
}

/// <summary>Who owns a unit from a day on.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Customer">Whose it is.</param>
/// <param name="From">From this day.</param>
public sealed record Ownership(Origin Origin, string Customer, DateOnly From) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Ownership> Shape { get; } = new("an owner", "Who owns a unit from a day on.", f => new Ownership(
        f.Origin,
        f.Required("customer", Scalars.Id, "A file in customers/."),
        f.Required("from", Scalars.Date, "From this day.")));
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
        f.Required("part", Scalars.Id, "Which part of the gearbox."),
        f.Optional("serial", Scalars.Text, "Serial or batch."),
        f.OptionalValue("use", Scalars.Use, "What the part had run by the unit's first day.")));
}
