using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Gearing;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>Says what the public gearing pages say. None of them names a customer.</summary>
public static class ReferenceComposer
{
    /// <summary>The template of the first page.</summary>
    public const string IndexTemplate = "reference-index.html";

    /// <summary>The template of a page with choices.</summary>
    public const string Template = "reference.html";

    /// <summary>Composes the first page.</summary>
    public static ReferenceIndex Index(Composition composition, IReadOnlyList<ReferenceSubject> subjects)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var page = Addresses.ReferenceIndex;
        LinkView[] Links(string start) =>
            [.. subjects.Where(s => s.Id.StartsWith(start, StringComparison.Ordinal)).Select(s => new LinkView(Addresses.Link(page, Addresses.ReferencePage(s.Id)), s.Name))];
        return new ReferenceIndex(
            PageFrame.Head(composition, page, composition.Say("reference.title", ("shop", composition.Shop.Name)), composition.Say("reference.lead")),
            Links("gearbox-"),
            Links("car-"),
            [.. subjects.SelectMany(s => WallLinks(page, s, withName: true, composition))],
            new LinkView(Addresses.Link(page, Addresses.Terms), composition.Say("term.page.heading")),
            PageFrame.PlainFoot(composition));
    }

    /// <summary>Composes the page of a gearbox or a car.</summary>
    public static ReferencePage Page(Composition composition, ReferenceSubject subject)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(subject);
        var page = Addresses.ReferencePage(subject.Id);
        var groups = ReferenceChoices.Groups(subject, composition);
        string?[] lines =
        [
            subject.Description,
            subject.Tyres.Count == 1 ? composition.Say("reference.one_tyre", ("tyre", subject.Tyres[0].Words)) : null,
            composition.Say("reference.limit", ("rpm", composition.Figures.Rpm(subject.Limit).Text)),
            subject.Tyres.Count > 0 ? composition.Say("reference.past") : null,
            composition.Say("reference.manual"),
        ];
        return new ReferencePage(
            PageFrame.Head(
                composition,
                page,
                composition.Say("reference.page_title", ("name", subject.Name), ("shop", composition.Shop.Name)),
                composition.Say("reference.lead"),
                rules: ReferenceChoices.Stylesheet(subject),
                links: new LinkView(Addresses.Link(page, Addresses.ReferenceIndex), composition.Say("reference.to_index"))),
            composition.Say("reference.heading", ("name", subject.Name)),
            [.. lines.OfType<string>()],
            groups,
            [.. ReferenceChoices.All(subject).Select(c => CombinationOf(c, subject, composition))],
            WallLinks(page, subject, withName: false, composition),
            DataFiles.Section(page, ReferenceTables.Of(composition, subject), composition),
            PageFrame.PlainFoot(composition));
    }

    private static LinkView[] WallLinks(string page, ReferenceSubject subject, bool withName, Composition composition) =>
    [
        .. subject.Tyres.Select((t, i) => new LinkView(
            Addresses.Link(page, Addresses.WallPage(subject.Id, i)),
            withName ? composition.Say("reference.wall_link_named", ("name", subject.Name), ("tyre", t.Words)) : composition.Say("reference.wall_link", ("tyre", t.Words)))),
    ];

    private static Combination CombinationOf(Choice choice, ReferenceSubject subject, Composition composition)
    {
        var box = subject.Boxes[choice.Set];
        var train = box.Drivetrain.With(box.Stock.DropPairs[choice.Pair], box.Stock.FinalDrives[choice.Final]);
        var gears = GearingWords.Gears(new Eng.GearSet(train.DropPair, train.FinalDrive), composition);
        var heading = train.DropPair is null
            ? composition.Say("reference.combination_final", ("final", GearingWords.Final(train.FinalDrive, composition)))
            : composition.Say("reference.combination", ("pair", GearingWords.Pair(train.DropPair, composition)), ("final", GearingWords.Final(train.FinalDrive, composition)));
        var table = subject.Tyres.Count == 0 ? null : Eng.SpeedTable.For(train, subject.Tyres[choice.Tyre].Tyre, subject.Limit).Value;
        return new Combination(
            choice.Classes,
            heading,
            Rests(choice, subject, composition),
            table is null ? null : SpeedPerGearChart.Draw(
                SpeedPerGear.Input(new ChartFrame(choice.Id, heading, composition.Say("reference.chart_words", ("gears", gears))), table, null, null, composition),
                ChartSize.Compact),
            [.. train.Gears.Select((g, i) => Row(g, i + 1, train, table, choice, subject, composition))]);
    }

    private static string? Rests(Choice choice, ReferenceSubject subject, Composition composition)
    {
        string?[] parts =
        [
            subject.Boxes.Count > 1 ? composition.Say("reference.chosen_set", ("set", subject.Boxes[choice.Set].Set.Name)) : null,
            subject.Tyres.Count > 1 ? composition.Say("reference.one_tyre", ("tyre", subject.Tyres[choice.Tyre].Words)) : null,
        ];
        return parts.Any(p => p is not null) ? string.Join(' ', parts.OfType<string>()) : null;
    }

    private static ReferenceRow Row(Eng.Gear gear, int number, Eng.Drivetrain train, Eng.SpeedTable? table, Choice choice, ReferenceSubject subject, Composition composition)
    {
        var row = table?.Rows[number - 1];
        return new ReferenceRow(
            gear.Name,
            GearingWords.Pair(gear.Pairs[0], composition),
            composition.Figures.Number(train.OverallRatio(number), 3).Text,
            row is null ? null : composition.Figures.Speed(row.SpeedPer1000Rpm, 1).Both,
            row is null ? null : composition.Figures.Speed(row.SpeedAtLimit).Both,
            row is null ? null : PublicLimits.Exceeded(row, train, choice, subject, composition),
            row?.EngineSpeedAfterUpshift is { } lands ? composition.Figures.Rpm(lands).Text : null);
    }
}
