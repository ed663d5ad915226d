using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>What kind of setting it is.</summary>
public enum SettingKind
{
    /// <summary>Axial play.</summary>
    EndFloat,

    /// <summary>Axial squeeze of bearings.</summary>
    Preload,

    /// <summary>Play between teeth.</summary>
    Backlash,

    /// <summary>Wobble of a turning surface.</summary>
    RunOut,

    /// <summary>Torque to turn a shaft.</summary>
    DragTorque,

    /// <summary>Tightening torque.</summary>
    Tightening,

    /// <summary>Depth, height or position.</summary>
    Position,

    /// <summary>Torque that turns one output shaft of a plate differential while the other is held.</summary>
    Breakaway,
}

/// <summary>How adding shim changes a setting.</summary>
public enum ShimSense
{
    /// <summary>More shim makes the value smaller (end float under a cover).</summary>
    MoreShimLess,

    /// <summary>More shim makes the value larger.</summary>
    MoreShimMore,
}

/// <summary>Something that must be set, with its target.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Kind">What kind of setting it is.</param>
/// <param name="Target">The target band, from the maker's manual.</param>
/// <param name="Shims">Which shims set it; null when shims do not.</param>
/// <param name="Sense">How adding shim changes it.</param>
/// <param name="Condition">Threads dry or oiled, box cold or warm: what the value holds for.</param>
/// <param name="Required">Whether a finished job must have it.</param>
/// <param name="Instrument">What it is measured with if the values have no unit and name no other.</param>
public sealed record Setting(
    Origin Origin,
    string Id,
    string Name,
    SettingKind Kind,
    Band<IQuantity> Target,
    string? Shims,
    ShimSense Sense,
    string? Condition,
    bool Required,
    string? Instrument) : IPlaced
{
    /// <summary>The band that a pack of shims is picked for, or why none can be worked out.</summary>
    public Parsed<Band<IQuantity>> PackBand => this switch
    {
        { Kind: SettingKind.Backlash } => Parsed.Bad<Band<IQuantity>>(
            $"'{Name}' is a backlash, which does not change one for one with its shims.",
            "Use the maker's table for it. This command calculates end float, preload and position."),
        { Kind: SettingKind.RunOut or SettingKind.Tightening } => Parsed.Bad<Band<IQuantity>>(
            $"'{Name}' does not change with the thickness of its shims.", "Delete 'shims' from the setting in the gearbox file."),
        { Target: { Low: Length, High: Length } } => Parsed.Good(Target),
        { Target: { Low: null or Length, High: null or Length } } => Parsed.Bad<Band<IQuantity>>(
            $"The target of '{Name}' has one end only, so no pack can be picked for it.", "Write both ends in the gearbox file, such as 0.05 to 0.10 mm."),
        _ => Parsed.Bad<Band<IQuantity>>(
            $"The target of '{Name}' is not a length, so no pack can be calculated for it: a torque or force does not change in proportion to the shims.",
            "Follow the maker's procedure: change the pack step by step and measure again."),
    };

    private static ChoiceShape<SettingKind> KindWords { get; } = new(
        "a kind of setting",
        ("end float", SettingKind.EndFloat),
        ("preload", SettingKind.Preload),
        ("backlash", SettingKind.Backlash),
        ("run-out", SettingKind.RunOut),
        ("drag torque", SettingKind.DragTorque),
        ("tightening torque", SettingKind.Tightening),
        ("position", SettingKind.Position),
        ("breakaway torque", SettingKind.Breakaway));

    private static ChoiceShape<ShimSense> SenseWords { get; } = new(
        "an effect of adding shim", ("smaller", ShimSense.MoreShimLess), ("larger", ShimSense.MoreShimMore));

    /// <summary>How it is written.</summary>
    public static RecordShape<Setting> Shape { get; } = new("a setting", "A setting, with its target.", f => new Setting(
        f.Origin,
        f.Required("id", Scalars.Id.Like("lay-float"), "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("kind", KindWords, "Kind of setting."),
        f.Required("target", Scalars.Band, "Target band, from the maker's manual."),
        f.Optional("shims", Scalars.Id.Like("lay-shims"), "Shims used for it: an id under shims."),
        f.Or("more_shim", SenseWords, ShimSense.MoreShimLess, "Whether adding shim makes the value smaller or larger. Default: smaller."),
        f.Optional("condition", Scalars.Text, "Condition for the value, such as threads oiled."),
        f.Or("required", Scalars.YesNo, true, "Whether a finished job must record it. Default: yes."),
        f.Optional("instrument", Scalars.Id.Like("mic-25"), "Instrument for values without a unit: its id in shop.yaml.")));
}

/// <summary>Shims of one kind in stock.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name that settings refer to.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Tolerance">Thickness tolerance of one shim, plus or minus; null for the usual 0.005 mm.</param>
/// <param name="Stock">Thicknesses and counts.</param>
public sealed record ShimStock(Origin Origin, string Id, string Name, Length? Tolerance, IReadOnlyList<ShimThickness> Stock) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<ShimStock> Shape { get; } = new("a shim stock", "Shims of one kind in stock.", f => new ShimStock(
        f.Origin,
        f.Required("id", Scalars.Id.Like("lay-shims"), "Short name that settings refer to."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.OptionalValue("tolerance", Quantities.Length.Like("0.005 mm"), "Thickness tolerance of one shim, plus or minus."),
        f.Required("stock", new ListShape<ShimThickness>(ShimThickness.Shape, atLeast: 1), "Thicknesses, with the count of each.")));
}

/// <summary>Shims of one thickness in stock.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Count">How many.</param>
public sealed record ShimThickness(Origin Origin, Length Thickness, int Count) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<ShimThickness> Shape { get; } = new("a shim thickness", "Shims of one thickness.", f => new ShimThickness(
        f.Origin,
        f.Required("thickness", Quantities.Length.Like("0.12 mm"), "Nominal thickness."),
        f.Required("count", Scalars.CountOrNone, "Number in stock.")));
}
