using Layshaft.Book.Places;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Records;

/// <summary>What the wear of the dogs can say about how they engage.</summary>
public enum WearPattern
{
    /// <summary>Reverse or first is worn: engaged at rest.</summary>
    AtRest,

    /// <summary>One gear that is engaged on the move stands out.</summary>
    OneGear,

    /// <summary>Gears that are engaged on the move are worn, on no clear side.</summary>
    SeveralGears,

    /// <summary>Their drive side is worn.</summary>
    DriveSide,

    /// <summary>Their coast side is worn.</summary>
    CoastSide,

    /// <summary>A back-cut is worn.</summary>
    BackCutWorn,

    /// <summary>No gear has reached the watch level.</summary>
    NothingWorn,
}

/// <summary>The shop's own words on driving, printed when their rule holds.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="When">The rule.</param>
/// <param name="Words">The words (Markdown).</param>
public sealed record Advice(Origin Origin, WearPattern When, string Words) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Advice> Shape { get; } = new("a piece of advice", "Driving advice, printed in place of the built-in words when its condition applies.", f => new Advice(
        f.Origin,
        f.Required(
            "when",
            new ChoiceShape<WearPattern>(
                "a wear pattern",
                ("at rest", WearPattern.AtRest),
                ("one gear", WearPattern.OneGear),
                ("several gears", WearPattern.SeveralGears),
                ("drive side", WearPattern.DriveSide),
                ("coast side", WearPattern.CoastSide),
                ("back-cut worn", WearPattern.BackCutWorn),
                ("nothing worn", WearPattern.NothingWorn)),
            "Wear pattern for which the advice is printed."),
        f.Required("words", Scalars.Text, "The advice (Markdown).")));
}
