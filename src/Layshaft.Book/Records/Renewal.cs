using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>A part that was changed.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Part">Which part of the gearbox.</param>
/// <param name="Serial">Serial or batch of the part that went in.</param>
/// <param name="Use">What the part that went in had run before; null for a new one.</param>
/// <param name="From">The unit from which a used part came; null for one from stock.</param>
/// <param name="OldSerial">Serial of the part that came out.</param>
/// <param name="Reason">Why the life of the part that came out ended; null to take it from the grade of its finding.</param>
/// <param name="Why">Why it was changed, for the customer.</param>
/// <param name="Unapproved">Why it was changed without the customer's approval, for the customer.</param>
public sealed record Renewal(
    Origin Origin, string Part, string? Serial, Values.Use? Use, string? From, string? OldSerial, RenewalCause? Reason, string? Why, string? Unapproved) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Renewal> Shape { get; } = new("a renewed part", "A part that was renewed.", f => new Renewal(
        f.Origin,
        f.Required("part", Scalars.Id, "Part: its id in the gearbox file."),
        f.Optional("serial", Scalars.Text, "Serial or batch of the fitted part."),
        f.OptionalValue("use", Scalars.Use.Like("12 h"), "Usage of the fitted part before. Default: new."),
        f.Optional("from", Scalars.Id.Like("t6-022"), "Unit that a used part came from."),
        f.Optional("old_serial", Scalars.Text, "Serial of the removed part."),
        f.OptionalValue("reason", ReasonWords, "Why the part was removed. Worn, damaged and broken count as failures; with the other reasons the part was still good. Default: by the grade of its finding."),
        f.Optional("why", Scalars.Text, "Reason for the renewal, for the customer."),
        f.Optional("unapproved", Scalars.Text, "Why it was renewed without the customer's approval. Printed on the report.")));

    private static ChoiceShape<RenewalCause> ReasonWords => new(
        "a reason for renewal",
        ("worn", RenewalCause.Worn),
        ("damaged", RenewalCause.Damaged),
        ("broken", RenewalCause.Broken),
        ("precaution", RenewalCause.Precaution),
        ("service life", RenewalCause.ServiceLife),
        ("with another part", RenewalCause.WithAnotherPart),
        ("on request", RenewalCause.OnRequest));
}

/// <summary>Why a part was renewed.</summary>
public enum RenewalCause
{
    /// <summary>Worn to its limit or near it.</summary>
    Worn,

    /// <summary>Pitted, scuffed, cracked or the like.</summary>
    Damaged,

    /// <summary>Broken.</summary>
    Broken,

    /// <summary>Still good, renewed while the box was open.</summary>
    Precaution,

    /// <summary>Still good, but its service life was up.</summary>
    ServiceLife,

    /// <summary>Still good, renewed with the part that it runs with.</summary>
    WithAnotherPart,

    /// <summary>Still good, renewed because the customer asked for it.</summary>
    OnRequest,
}
