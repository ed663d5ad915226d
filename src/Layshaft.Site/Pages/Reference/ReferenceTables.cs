using Layshaft.Site.Pages.Tables;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>The figures of the public gearing pages for a program.</summary>
public static class ReferenceTables
{
    /// <summary>The tables of a page with choices, and of a wall chart.</summary>
    public static IReadOnlyList<string> Names { get; } = ["speeds"];

    /// <summary>The speeds of everything that a page lets choose, a line for each gear.</summary>
    public static IReadOnlyList<TableView> Of(Composition composition, ReferenceSubject subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return [Table(composition, subject, ReferenceChoices.All(subject))];
    }

    /// <summary>The speeds of a wall chart: the first ratio set on one of the tyres.</summary>
    public static IReadOnlyList<TableView> OfWall(Composition composition, ReferenceSubject subject, int tyre)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return [Table(composition, subject, ReferenceChoices.All(subject).Where(c => c.Set == 0 && c.Tyre == tyre))];
    }

    private static TableView Table(Composition composition, ReferenceSubject subject, IEnumerable<Choice> choices)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return TableView.Of(
            "speeds",
            composition.Say("life.data.speeds"),
            [
                composition.Say("reference.head.gear"), composition.Say("life.data.set"), composition.Say("life.data.driver"), composition.Say("life.data.driven"),
                composition.Say("life.data.final"), composition.Say("life.data.tyre"), composition.Say("life.data.gear_driver"), composition.Say("life.data.gear_driven"),
                composition.Say("reference.head.overall"), composition.Say("reference.head.thousand"), composition.Say("reference.head.limit"), composition.Say("reference.head.next_gear"), composition.Say("gearing.head.limits"),
            ],
            choices.SelectMany(c => Rows(c, subject, composition)));
    }

    private static IEnumerable<IReadOnlyList<Cell>> Rows(Choice choice, ReferenceSubject subject, Composition composition)
    {
        var box = subject.Boxes[choice.Set];
        var train = box.Drivetrain.With(box.Stock.DropPairs[choice.Pair], box.Stock.FinalDrives[choice.Final]);
        var table = subject.Tyres.Count == 0 ? null : Eng.SpeedTable.For(train, subject.Tyres[choice.Tyre].Tyre, subject.Limit).Value;
        return train.Gears.Select((gear, i) => (IReadOnlyList<Cell>)
        [
            Cell.Of(gear.Name),
            Cell.Of(box.Set.Name),
            Teeth(train.DropPair?.Driver),
            Teeth(train.DropPair?.Driven),
            Cell.Pure(train.FinalDrive.Ratio, 3, composition),
            Cell.Of(subject.Tyres.Count == 0 ? null : subject.Tyres[choice.Tyre].Words),
            Cell.Count(gear.Pairs[0].Driver),
            Cell.Count(gear.Pairs[0].Driven),
            Cell.Pure(train.OverallRatio(i + 1), 3, composition),
            table is null ? Cell.Empty : Cell.Speed(table.Rows[i].SpeedPer1000Rpm, 1, composition),
            table is null ? Cell.Empty : Cell.Speed(table.Rows[i].SpeedAtLimit, 0, composition),
            table?.Rows[i].EngineSpeedAfterUpshift is { } lands ? Cell.Rpm(lands, composition) : Cell.Empty,
            Cell.Of(table is null ? null : PublicLimits.Exceeded(table.Rows[i], train, choice, subject, composition)),
        ]);
    }

    private static Cell Teeth(int? teeth) => teeth is { } count ? Cell.Count(count) : Cell.Empty;
}
