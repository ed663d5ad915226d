using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>What the wear can say about the driving.</summary>
public enum WearPattern
{
    /// <summary>The low gears are worst.</summary>
    LowGearsWorst,

    /// <summary>One gear stands out.</summary>
    OneGear,

    /// <summary>All gears alike.</summary>
    AllAlike,

    /// <summary>The coast side is worst: it lets go on the overrun.</summary>
    CoastSide,

    /// <summary>The drive side is worst.</summary>
    DriveSide,

    /// <summary>Nothing to renew.</summary>
    NothingWorn,
}

/// <summary>The shop's own words on driving, printed when their rule holds.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="When">The rule.</param>
/// <param name="Words">The words (Markdown).</param>
public sealed record Advice(Origin Origin, WearPattern When, string Words) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Advice> Shape { get; } = new("a piece of advice", "Driving advice, printed when its condition applies.", f => new Advice(
        f.Origin,
        f.Required(
            "when",
            new ChoiceShape<WearPattern>(
                "a wear pattern",
                ("low gears worst", WearPattern.LowGearsWorst),
                ("one gear", WearPattern.OneGear),
                ("all alike", WearPattern.AllAlike),
                ("coast side", WearPattern.CoastSide),
                ("drive side", WearPattern.DriveSide),
                ("nothing worn", WearPattern.NothingWorn)),
            "Wear pattern for which the advice is printed."),
        f.Required("words", Scalars.Text, "The advice (Markdown).")));
}
