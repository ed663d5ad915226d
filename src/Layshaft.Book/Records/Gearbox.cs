using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>What kind of unit a type is.</summary>
public enum UnitKind
{
    /// <summary>A gearbox or transaxle: it has ratio sets and a final drive.</summary>
    Gearbox,

    /// <summary>A final drive or quick-change axle on its own.</summary>
    Axle,

    /// <summary>A differential on its own.</summary>
    Differential,
}

/// <summary>A type of gearbox: file <c>gearboxes/ID.yaml</c>.</summary>
public sealed record Gearbox(
    string Id,
    Origin Origin,
    string Name,
    string? Description,
    string? Manual,
    UnitKind Kind,
    IReadOnlyList<RatioSet> RatioSets,
    DropGears? DropGears,
    IReadOnlyList<Teeth> FinalDrives,
    IReadOnlyList<GearChoices> GearPairs,
    ChangeTimes? ChangeTimes,
    PlateDifferential? Differential,
    GearPair? MainGears,
    RotationalSpeed? OutputLimit,
    double? MeshEfficiency,
    MassMomentOfInertia? InputInertia,
    MassMomentOfInertia? DogInertia,
    IReadOnlyList<Part> Parts,
    IReadOnlyList<ShimStock> Shims,
    IReadOnlyList<Setting> Settings,
    IReadOnlyList<Step> Strip,
    IReadOnlyList<Step> Build,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<UsualWork> UsualWork) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Gearbox> Shape { get; } = new("a gearbox", "A type of gearbox.", f => new Gearbox(
        string.Empty,
        f.Origin,
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Optional("description", Scalars.Text, "Description in one or two sentences."),
        f.Optional("manual", Scalars.Text, "The maker's manual that applies, with its issue."),
        f.Or("kind", KindWords, UnitKind.Gearbox, "Kind of unit: a gearbox needs ratio_sets and final_drives, an axle needs final_drives, a differential has neither. Default: gearbox."),
        f.List("ratio_sets", RatioSet.Shape, "Available ratio sets. A gearbox needs them."),
        f.Optional("drop_gears", Records.DropGears.Shape, "The quick-change gears outside the main case."),
        f.List("final_drives", Scalars.FinalDrive, "Final drives in stock, crown wheel/pinion, including the fitted one. A gearbox and an axle need them."),
        f.List("gear_pairs", GearChoices.Shape, "Pairs in stock for the gears in the box, if they can be changed one by one. Pairs of the fitted ratio set need not be listed."),
        f.Optional("change_times", Records.ChangeTimes.Shape, "How long it takes to change gears."),
        f.Optional("differential", PlateDifferential.Shape, "The plate differential, alone or inside the gearbox."),
        f.Optional("main_gears", GearPair.Shape, "How the gears on the mainshaft and layshaft are cut."),
        f.OptionalValue("output_limit", Quantities.Rotation.Like("9000 rpm"), "Maximum speed of the output shaft, from the maker's manual."),
        f.OptionalValue("mesh_efficiency", Scalars.Part.Like("98.8 %"), "Efficiency of a pair of gears of 25 teeth each; the loss of other pairs goes with the sum of 1/teeth. It is used together with the car's axle_efficiency."),
        f.OptionalValue("input_inertia", Quantities.Inertia.Like("0.0085 kg·m²"), "Moment of inertia of the clutch plate, the input shaft and what turns with them, at the input shaft."),
        f.OptionalValue("dog_inertia", Quantities.Inertia.Like("0.0016 kg·m²"), "Moment of inertia that a dog ring must accelerate or slow down, at the mainshaft, if known."),
        f.Required("parts", new ListShape<Part>(Part.Shape, atLeast: 1), "Inspected parts, with their measures."),
        f.List("shims", ShimStock.Shape, "Shims in stock."),
        f.List("settings", Setting.Shape, "Settings, with their targets."),
        f.List("strip", Step.Shape, "Strip list, step by step."),
        f.List("build", Step.Shape, "Build list, step by step."),
        f.List("cautions", Scalars.Text, "Cautions for this gearbox, printed on its reports."),
        f.List("usual_work", Records.UsualWork.Shape, "Labour of an estimate without 'lines'.")));

    private static ChoiceShape<UnitKind> KindWords => new(
        "a kind of unit", ("gearbox", UnitKind.Gearbox), ("axle", UnitKind.Axle), ("differential", UnitKind.Differential));

    /// <summary>The part with this id, or null.</summary>
    public Part? PartOf(string id) => Parts.FirstOrDefault(p => p.Id == id);

    /// <summary>The setting with this id, or null.</summary>
    public Setting? SettingOf(string id) => Settings.FirstOrDefault(s => s.Id == id);

    /// <summary>The ratio set with this id, or null.</summary>
    public RatioSet? RatioSetOf(string? id) => RatioSets.FirstOrDefault(r => r.Id == id);
}

/// <summary>A set of gears.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Gears">First gear first.</param>
/// <param name="Reverse">Reverse, where the box has one.</param>
public sealed record RatioSet(Origin Origin, string Id, string Name, IReadOnlyList<Teeth> Gears, Teeth? Reverse) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<RatioSet> Shape { get; } = new("a ratio set", "A set of gear ratios.", f => new RatioSet(
        f.Origin,
        f.Required("id", Scalars.Id.Like("standard"), "Short name."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("gears", new ListShape<Teeth>(Scalars.Teeth, atLeast: 1, atMost: 12, whole: true), "The gears, first gear first, each driven/driver."),
        f.OptionalValue("reverse", Scalars.Teeth.Like("44/15"), "Reverse, driven/driver overall.")));
}

/// <summary>How a family of gears on one centre distance is cut.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Module">Normal module.</param>
/// <param name="PressureAngle">Pressure angle.</param>
/// <param name="CentreDistance">Distance of the shafts.</param>
/// <param name="FaceWidth">Width of the teeth.</param>
public sealed record GearPair(Origin Origin, Length Module, Angle PressureAngle, Length CentreDistance, Length? FaceWidth) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<GearPair> Shape { get; } = new("a gear cut", "How gears on one centre distance are cut.", f => new GearPair(
        f.Origin,
        f.Required("module", Quantities.Length.Like("3 mm"), "Module."),
        f.Or("pressure_angle", Quantities.Angle, Angle.FromDegrees(20), "Pressure angle. Default: 20°."),
        f.Required("centre_distance", Quantities.Length.Like("91 mm"), "Centre distance of the shafts."),
        f.OptionalValue("face_width", Quantities.Length.Like("17 mm"), "Face width of the teeth.")));
}

/// <summary>Where the drop gears sit in the power flow.</summary>
public enum DropGearPlace
{
    /// <summary>Behind the gears, between mainshaft and output.</summary>
    Output,

    /// <summary>Before the gears, between input shaft and layshaft.</summary>
    Input,
}

/// <summary>The quick-change gears outside the main case.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Cut">How they are cut.</param>
/// <param name="Pairs">Pairs in stock; each can be swapped unless it says otherwise.</param>
/// <param name="Swappable">Whether each pair may be fitted the other way round.</param>
/// <param name="Place">Where they sit in the power flow: it tells how fast the dog rings turn.</param>
public sealed record DropGears(Origin Origin, GearPair Cut, IReadOnlyList<Teeth> Pairs, bool Swappable, DropGearPlace Place) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<DropGears> Shape { get; } = new("drop gears", "The quick-change gears outside the main case.", f => new DropGears(
        f.Origin,
        f.Required("cut", GearPair.Shape, "How they are cut."),
        f.Required("pairs", new ListShape<Teeth>(Scalars.Teeth, atLeast: 1), "Drop pairs in stock, each driven/driver."),
        f.Or("swappable", Scalars.YesNo, true, "Whether each pair may also be fitted the other way round. Default: yes."),
        f.Or(
            "place",
            new ChoiceShape<DropGearPlace>("a drop gear position", ("output", DropGearPlace.Output), ("input", DropGearPlace.Input)),
            DropGearPlace.Output,
            "Position: output (behind the gears) or input (in front of them). Default: output.")));
}

/// <summary>A step of a strip or build list.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name that jobs tick.</param>
/// <param name="Do">What to do.</param>
/// <param name="Caution">What can go wrong or hurt.</param>
public sealed record Step(Origin Origin, string Id, string Do, string? Caution) : IPlaced
{
    /// <summary>How it is written.</summary>
    public static RecordShape<Step> Shape { get; } = new("a step", "A step of a strip or build list.", f => new Step(
        f.Origin,
        f.Required("id", Scalars.Id.Like("drain"), "Short name that jobs tick off."),
        f.Required("do", Scalars.Text, "What to do."),
        f.Optional("caution", Scalars.Text, "Hazard, its consequence and how to avoid it.")));
}
