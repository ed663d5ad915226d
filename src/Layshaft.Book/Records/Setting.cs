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
public sealed record Setting(
    Origin Origin,
    string Id,
    string Name,
    SettingKind Kind,
    Band<IQuantity> Target,
    string? Shims,
    ShimSense Sense,
    string? Condition,
    bool Required) : IPlaced
{
    private static ChoiceShape<SettingKind> KindWords { get; } = new(
        "a kind of setting",
        ("end float", SettingKind.EndFloat),
        ("preload", SettingKind.Preload),
        ("backlash", SettingKind.Backlash),
        ("run-out", SettingKind.RunOut),
        ("drag torque", SettingKind.DragTorque),
        ("tightening torque", SettingKind.Tightening),
        ("position", SettingKind.Position));

    private static ChoiceShape<ShimSense> SenseWords { get; } = new(
        "what more shim does", ("smaller", ShimSense.MoreShimLess), ("larger", ShimSense.MoreShimMore));

    /// <summary>How it is written.</summary>
    public static RecordShape<Setting> Shape { get; } = new("a setting", "Something that must be set, with its target.", f => new Setting(
        f.Origin,
        f.Required("id", Scalars.Id, "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("kind", KindWords, "What kind of setting it is."),
        f.Required("target", Scalars.Band, "The target, from the maker's manual."),
        f.Optional("shims", Scalars.Id, "The id of the shims that set it."),
        f.Or("more_shim", SenseWords, ShimSense.MoreShimLess, "Whether more shim makes the value smaller or larger."),
        f.Optional("condition", Scalars.Text, "What the value holds for, such as threads oiled."),
        f.Or("required", Scalars.YesNo, true, "Whether a finished job must have it.")));
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
    public static RecordShape<ShimStock> Shape { get; } = new("a stock of shims", "Shims of one kind in stock.", f => new ShimStock(
        f.Origin,
        f.Required("id", Scalars.Id, "Short name that settings refer to."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.OptionalValue("tolerance", Quantities.Length, "Thickness tolerance of one shim, plus or minus."),
        f.Required("stock", new ListShape<ShimThickness>(ShimThickness.Shape, atLeast: 1), "Thicknesses and how many of each.")));
}

/// <summary>Shims of one thickness in stock.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Count">How many.</param>
public sealed record ShimThickness(Origin Origin, Length Thickness, int Count) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<ShimThickness> Shape { get; } = new("a thickness with its count", "Shims of one thickness.", f => new ShimThickness(
        f.Origin,
        f.Required("thickness", Quantities.Length, "Nominal thickness."),
        f.Required("count", Scalars.CountOrNone, "How many the shop has.")));
}
