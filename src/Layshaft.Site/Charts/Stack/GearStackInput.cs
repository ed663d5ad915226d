namespace Layshaft.Site.Charts.Stack;

/// <summary>Data of a <see cref="GearStackDrawing"/>. All lengths in mm.</summary>
/// <param name="Frame">Id prefix, title, and the drawing's content in words.</param>
/// <param name="Shafts">The shafts; at least one. Two may share a height (input and mainshaft in one line).</param>
/// <param name="Parts">What sits on them.</param>
/// <param name="FinalDrive">Bevel pinion and crown wheel; null where the box has none.</param>
/// <param name="Dimensions">Centre distances to be dimensioned; may be empty.</param>
public sealed record GearStackInput(
    ChartFrame Frame,
    IReadOnlyList<StackShaft> Shafts,
    IReadOnlyList<StackPart> Parts,
    StackFinalDrive? FinalDrive,
    IReadOnlyList<StackDimension> Dimensions);

/// <summary>A shaft. It reaches a little beyond its outermost parts.</summary>
/// <param name="Id">By which parts name it.</param>
/// <param name="Label">Its name on the drawing.</param>
/// <param name="Height">Height of its axis above any datum, upwards; the sections are turned into one plane.</param>
/// <param name="Diameter">Its diameter; above 0.</param>
public sealed record StackShaft(string Id, string Label, double Height, double Diameter);

/// <summary>What a part on a shaft is.</summary>
public enum StackPartKind
{
    /// <summary>A straight-cut gear, drop gears included; needs teeth and module.</summary>
    Gear,

    /// <summary>A dog ring with its fork groove. Gears next to it are given dogs.</summary>
    DogRing,

    /// <summary>The hub inside a dog ring.</summary>
    Hub,

    /// <summary>A bearing. Bearings in line stand in a wall of the case.</summary>
    Bearing,

    /// <summary>A shaft seal.</summary>
    Seal,
}

/// <summary>A part on a shaft.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="ShaftId">The shaft that it sits on.</param>
/// <param name="Middle">Its middle along the shaft, from the input end.</param>
/// <param name="Width">Its width along the shaft, face width for a gear; above 0.</param>
/// <param name="Note">Its label, grade and link; null draws it without.</param>
/// <param name="Teeth">Teeth of a gear.</param>
/// <param name="Module">Module of a gear.</param>
/// <param name="OuterDiameter">Outer diameter of what is no gear; null draws a usual one.</param>
public sealed record StackPart(
    StackPartKind Kind,
    string ShaftId,
    double Middle,
    double Width,
    StackNote? Note,
    int? Teeth = null,
    double? Module = null,
    double? OuterDiameter = null);

/// <summary>What is written about a part.</summary>
/// <param name="Label">A very short label beside its mark, for example tooth count or gear; may be empty.</param>
/// <param name="Grade">The part's grade; null marks none.</param>
/// <param name="Link">Where its finding is: <c>#fragment</c> or a relative address; null draws no link.</param>
/// <param name="AccessibleName">What the link says when read aloud: part and grade.</param>
public sealed record StackNote(string Label, GradeMark? Grade, string? Link, string AccessibleName);

/// <summary>A bevel pinion on the end of a shaft, with the crown wheel that it drives.</summary>
/// <param name="ShaftId">The pinion's shaft.</param>
/// <param name="PinionBack">Where the large end of the pinion's teeth is along the shaft; the pinion points away from the shaft's other parts.</param>
/// <param name="PinionTeeth">Teeth of the pinion.</param>
/// <param name="CrownTeeth">Teeth of the crown wheel.</param>
/// <param name="Module">Outer module.</param>
/// <param name="Note">Label, grade and link; null draws it without.</param>
public sealed record StackFinalDrive(
    string ShaftId, double PinionBack, int PinionTeeth, int CrownTeeth, double Module, StackNote? Note);

/// <summary>A dimension between two shafts.</summary>
/// <param name="FirstShaftId">One shaft.</param>
/// <param name="SecondShaftId">The other, at another height.</param>
/// <param name="Label">The distance in words, for example "82 mm".</param>
public sealed record StackDimension(string FirstShaftId, string SecondShaftId, string Label);
