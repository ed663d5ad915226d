using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Stack;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>What the drawing of a unit's gear stack shows: from the gearbox file, the teeth in the unit and the findings.</summary>
internal static class StackPicture
{
    /// <summary>The drawing's input; null where the gearbox file does not say enough for main gears on two shafts.</summary>
    public static GearStackInput? Of(ReportContext report)
    {
        var (gearbox, composition) = (report.Gearbox, report.Composition);
        if (gearbox.MainGears is not { } cut)
        {
            return null;
        }

        var heights = StackHeights.Of(gearbox);
        Part[] placed = [.. gearbox.Parts.Where(p => p is { Shaft: not null, Along: not null, Width: not null } && heights.ContainsKey(p.Shaft.Value))];
        StackPart[] parts = [.. placed.Select(p => PartOf(p, placed, report)).OfType<StackPart>()];
        StackPart[] gears = [.. parts.Where(p => p.Kind == StackPartKind.Gear)];
        if (gears.Select(g => g.ShaftId).Distinct().Count() < 2)
        {
            return null;
        }

        var diameter = StackHeights.ShaftDiameter(gears);
        ShaftPosition[] used = [.. heights.Keys.Where(s => parts.Any(p => p.ShaftId == Id(s))).OrderByDescending(s => heights[s])];
        return new GearStackInput(
            new ChartFrame("stack", composition.Say("stack.title", ("unit", report.Unit.Serial)), Description(report)),
            [.. used.Select(s => new StackShaft(Id(s), composition.Say($"stack.shaft.{Id(s)}"), heights[s].Millimeters, diameter))],
            parts,
            FinalDriveOf(report, used, cut),
            [.. StackHeights.Dimensions(gearbox, used).Select(d => new StackDimension(
                Id(d.First), Id(d.Second), Measured.Figure(d.Distance, Measured.DecimalsWritten(d.Distance), composition.Figures).Text))]);
    }

    private static StackPart? PartOf(Part part, IReadOnlyList<Part> placed, ReportContext report)
    {
        var (id, along, width) = (Id(part.Shaft!.Value), part.Along!.Value.Millimeters, part.Width!.Value.Millimeters);
        if (part.Kind is PartKind.Gear or PartKind.DropGear)
        {
            var cut = part.Kind == PartKind.DropGear ? report.Gearbox.DropGears?.Cut : report.Gearbox.MainGears;
            return cut is not null && report.Fitted.Of(part, report.Gearbox) is { } teeth
                ? new StackPart(StackPartKind.Gear, id, along, width, NoteOf(part, Number(teeth), report), teeth, cut.Module.Millimeters)
                : null;
        }

        StackPartKind? kind = part.Kind switch
        {
            PartKind.DogRing => StackPartKind.DogRing,
            PartKind.Hub => StackPartKind.Hub,
            PartKind.Bearing => StackPartKind.Bearing,
            PartKind.Seal => StackPartKind.Seal,
            _ => null,
        };
        return kind is { } k
            ? new StackPart(k, id, along, width, NoteOf(part, k == StackPartKind.DogRing ? RingLabel(part, placed) : string.Empty, report))
            : null;
    }

    // The ring's two gears: those next to it on its shaft.
    private static string RingLabel(Part ring, IReadOnlyList<Part> placed)
    {
        Part[] gears = [.. placed.Where(p => p is { Kind: PartKind.Gear, Gear: >= 1 } && p.Shaft == ring.Shaft).OrderBy(p => p.Along!.Value)];
        var (left, right) = (gears.LastOrDefault(g => g.Along < ring.Along), gears.FirstOrDefault(g => g.Along > ring.Along));
        int[] numbers = [.. new[] { left, right }.OfType<Part>().Select(g => g.Gear!.Value).Order()];
        return string.Join('·', numbers.Select(Number));
    }

    private static StackNote? NoteOf(Part part, string label, ReportContext report)
    {
        var finding = report.InOrder.FirstOrDefault(f => f.Part.Id == part.Id);
        if (finding is null)
        {
            return label.Length > 0 ? new StackNote(label, null, null, part.Name) : null;
        }

        var grade = GradeViews.Mark(finding.Grade, report.Composition);
        return new StackNote(
            label,
            grade,
            $"#{report.Anchor(finding)}",
            report.Composition.Say("stack.part", ("part", part.Name), ("grade", grade.Name)));
    }

    /// <summary>The final drive where the gearbox file says on which shaft and how far along its pinion sits.</summary>
    private static StackFinalDrive? FinalDriveOf(ReportContext report, IReadOnlyList<ShaftPosition> used, GearPair cut)
    {
        return report.Fitted.FinalDrive is { } teeth && report.Gearbox.Parts.FirstOrDefault(p => p.Kind == PartKind.FinalDrive && p.Along is not null && p.Shaft is { } s && used.Contains(s)) is { } part
            && teeth.Driven > teeth.Driver
                ? new StackFinalDrive(
                    Id(part.Shaft!.Value),
                    part.Along!.Value.Millimeters,
                    teeth.Driver,
                    teeth.Driven,
                    StackHeights.CrownModule(cut, teeth),
                    NoteOf(part, teeth.ToString(), report))
                : null;
    }

    private static string Description(ReportContext report) => report.Composition.Say(
        "stack.description",
        ("parts", string.Join("; ", report.InOrder.Select(f => report.Composition.Say(
            "stack.part", ("part", f.Part.Name), ("grade", GradeViews.Of(f.Grade, report.Composition).Name))))));

    private static string Id(ShaftPosition shaft) => shaft switch
    {
        ShaftPosition.Input => "input",
        ShaftPosition.Lay => "lay",
        ShaftPosition.Main => "main",
        _ => "output",
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
