using Layshaft.Site.Look;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>Composes a chart for the wall.</summary>
public static class WallComposer
{
    /// <summary>The template.</summary>
    public const string Template = "reference-wall.html";

    /// <summary>Composes the wall chart of a subject on one of its tyres, first ratio set.</summary>
    public static WallPage Compose(Composition composition, ReferenceSubject subject, int tyre)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(subject);
        var page = Addresses.WallPage(subject.Id, tyre);
        var box = subject.Boxes[0];
        var gears = box.Drivetrain.Gears;
        return new WallPage(
            PageFrame.Head(
                composition,
                page,
                composition.Say("reference.wall_title", ("name", subject.Name), ("shop", composition.Shop.Name)),
                null,
                PageStyles.Wall,
                links: new LinkView(Addresses.Link(page, Addresses.ReferencePage(subject.Id)), composition.Say("reference.to_page"))),
            composition.Say("reference.wall_heading", ("name", subject.Name), ("rpm", composition.Figures.Rpm(subject.Limit).Text)),
            composition.Say("reference.wall_rests", ("set", box.Set.Name), ("tyre", subject.Tyres[tyre].Words), ("units", Units(composition))),
            [.. box.Stock.FinalDrives.Select(f => new WallFinal(composition.Say("reference.wall_final", ("final", GearingWords.Final(f, composition))), gears.Count))],
            [.. box.Stock.FinalDrives.SelectMany(_ => gears.Select(g => g.Name))],
            [.. box.Stock.DropPairs.Select(p => Row(p, box.Drivetrain, box.Stock.FinalDrives, subject, tyre, composition))],
            DataFiles.Section(page, ReferenceTables.OfWall(composition, subject, tyre), composition),
            composition.Say("reference.past"),
            composition.Say("reference.manual"));
    }

    private static WallRow Row(
        Eng.ToothPair? pair, Eng.Drivetrain train, IReadOnlyList<Eng.FinalDrive> finals, ReferenceSubject subject, int tyre, Composition composition) => new(
        GearingWords.Pair(pair, composition),
        [
            .. finals.SelectMany(final =>
            {
                var gears = train.With(pair, final);
                return Eng.SpeedTable.For(gears, subject.Tyres[tyre].Tyre, subject.Limit).Require().Rows
                    .Select((row, i) => Cell(row.SpeedAtLimit, PublicLimits.Exceeded(row, gears, new Choice(0, 0, 0, tyre), subject, composition), i == 0, composition));
            }),
        ]);

    private static WallCell Cell(Speed speed, string? past, bool begins, Composition composition)
    {
        var first = composition.Figures.Speed(speed);
        var other = first.Unit == "km/h" ? speed.MilesPerHour : speed.KilometersPerHour;
        return new WallCell(first.Number, composition.Figures.Number(other).Text, past, begins);
    }

    private static string Units(Composition composition) => composition.Figures.Speed(Speed.Zero).Unit == "km/h"
        ? composition.Say("reference.units_metric")
        : composition.Say("reference.units_imperial");
}
