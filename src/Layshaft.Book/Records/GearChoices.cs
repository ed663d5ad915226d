using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>Pairs of gears that fit one position of a gearbox whose pairs can be changed one by one.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="Gear">The gear, 1 for first.</param>
/// <param name="Pairs">The pairs.</param>
public sealed record GearChoices(Origin Origin, int Gear, IReadOnlyList<Teeth> Pairs) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<GearChoices> Shape { get; } = new("gear pairs", "Pairs of gears for one position.", f => new GearChoices(
        f.Origin,
        f.Required("gear", Scalars.Count.Like("3"), "Gear: 1 for first."),
        f.Required("pairs", new ListShape<Teeth>(Scalars.Teeth, atLeast: 1, atMost: 24), "Pairs for this gear, each driven/driver.")));
}

/// <summary>An owner's own pairs for a unit.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="GearPairs">Pairs of gears in the box, by position.</param>
/// <param name="DropPairs">Drop pairs.</param>
/// <param name="FinalDrives">Final drives.</param>
public sealed record Kit(Origin Origin, IReadOnlyList<GearChoices> GearPairs, IReadOnlyList<Teeth> DropPairs, IReadOnlyList<Teeth> FinalDrives) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Kit> Shape { get; } = new("a kit", "An owner's own gears for a unit, besides the fitted ones.", f => new Kit(
        f.Origin,
        f.List("gear_pairs", GearChoices.Shape, "Pairs for the gears in the box."),
        f.List("drop_pairs", Scalars.Teeth, "Drop pairs, each driven/driver."),
        f.List("final_drives", Scalars.FinalDrive, "Final drives, crown wheel/pinion.")));
}

/// <summary>What is changed when gears are changed.</summary>
public enum ChangedGears
{
    /// <summary>The drop gears.</summary>
    DropGears,

    /// <summary>The final drive.</summary>
    FinalDrive,

    /// <summary>A pair of gears in the box.</summary>
    GearPair,
}

/// <summary>How long it takes to change gears.</summary>
/// <param name="Origin">Where it is written.</param>
/// <param name="DropGears">Drop gears; null if it is not known.</param>
/// <param name="FinalDrive">Final drive; null if it is not known.</param>
/// <param name="GearPair">One pair of gears in the box; null if it is not known.</param>
/// <param name="FurtherPair">Each further pair at the same time.</param>
/// <param name="BoxOut">The changes for which the gearbox is removed from the car.</param>
public sealed record ChangeTimes(Origin Origin, Duration? DropGears, Duration? FinalDrive, Duration? GearPair, Duration? FurtherPair, IReadOnlyList<ChangedGears> BoxOut) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<ChangeTimes> Shape { get; } = new("change times", "Working time to change gears, without removing and refitting the gearbox.", f => new ChangeTimes(
        f.Origin,
        f.OptionalValue("drop_gears", Quantities.Duration.Like("0.5 h"), "Working time to change the drop gears."),
        f.OptionalValue("final_drive", Quantities.Duration.Like("3 h"), "Working time to change the final drive."),
        f.OptionalValue("gear_pair", Quantities.Duration.Like("2.5 h"), "Working time to change one pair of gears in the box."),
        f.OptionalValue("further_pair", Quantities.Duration.Like("0.5 h"), "Working time for each further pair at the same time. Default: that of one pair."),
        f.List(
            "box_out",
            new ChoiceShape<ChangedGears>("a change of gears", ("drop gears", ChangedGears.DropGears), ("final drive", ChangedGears.FinalDrive), ("gear pair", ChangedGears.GearPair)),
            "Changes for which the gearbox must be out of the car.")));
}
