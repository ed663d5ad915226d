using Layshaft.Engineering.Gearing;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.Report;

/// <summary>The figures of a report's gearing section for a program. Where the section is left out, so are they.</summary>
internal static class GearingTables
{
    /// <summary>The tables, by their short names.</summary>
    public static IReadOnlyList<string> Names { get; } = ["ranking", "shifts", "changes", "dogs"];

    /// <summary>The tables of one report.</summary>
    public static IReadOnlyList<TableDraft> Of(ReportContext report)
    {
        var gearing = GearingSection.GearingOf(report);
        return [Ranking(gearing, report.Composition), Shifts(gearing, report.Composition), Changes(gearing, report.Composition), Dogs(gearing, report)];
    }

    // Every choice in stock, where the page shows the first few; and what was chosen or fitted without being in stock.
    private static TableDraft Ranking(EventGearing? gearing, Composition composition) => new TableDraft(
        "ranking",
        composition.Say("life.data.ranking"),
        [
            composition.Say("gearing.head.place"), composition.Say("gearing.head.loss"), composition.Say("life.data.driver"), composition.Say("life.data.driven"),
            composition.Say("life.data.final"), composition.Say("gearing.head.top"), composition.Say("life.data.straight"), composition.Say("gearing.head.gear"),
            composition.Say("gearing.head.rpm"), composition.Say("gearing.head.limiter"), composition.Say("gearing.head.ideal"),
            composition.Say("gearing.head.shifts"), composition.Say("gearing.head.corners"), composition.Say("life.data.what"),
        ],
        gearing is null ? [] : GearingSection.Candidates(gearing).Select(c => (IReadOnlyList<Cell>)
        [
            c.Place is { } place ? Cell.Count(place) : Cell.Of(composition.Say("gearing.row.not_stocked")),
            c.Candidate.IsFinished ? Cell.Seconds(gearing.LossOf(c.Candidate), 3, composition) : Cell.Of(composition.Say("gearing.not_finished")),
            Teeth(c.Candidate.DropPair?.Driver),
            Teeth(c.Candidate.DropPair?.Driven),
            Cell.Pure(c.Candidate.FinalDrive.Ratio, 3, composition),
            Cell.Speed(c.Candidate.TopSpeed, 0, composition),
            Cell.Of(c.Candidate.TopSpeedStraight),
            Cell.Count(c.Candidate.TopSpeedGear),
            Cell.Rpm(c.Candidate.EngineSpeedAtTop, composition),
            Cell.Seconds(c.Candidate.OnLimiter, 2, composition),
            c.Candidate.IsFinished ? Cell.Seconds(c.Candidate.LossToIdeal, 3, composition) : Cell.Of(composition.Say("gearing.not_finished")),
            Cell.Pure(c.Candidate.ShiftsPerLap, 0, composition),
            Cell.Of(GearingRow.CornersOf(c.Candidate, gearing)),
            Cell.Of(GearingSection.Names(c.Candidate, gearing, composition)),
        ]));

    private static TableDraft Shifts(EventGearing? gearing, Composition composition)
    {
        var shifts = gearing is null ? [] : UpshiftPlan.For(gearing.DrivenCar.Drivetrain, gearing.DrivenCar.Engine);
        return new TableDraft(
            "shifts",
            composition.Say("gearing.shifts"),
            [composition.Say("gearing.head.gear"), composition.Say("gearing.head.maximum_speed"), composition.Say("gearing.head.upshift"), composition.Say("gearing.head.drops_to")],
            gearing is null ? [] : GearingCharts.TableOf(gearing.DrivenCar).Rows.Select(row => (IReadOnlyList<Cell>)
            [
                Cell.Of(row.Name),
                Cell.Speed(row.OverRevAbove, 0, composition),
                row.Number <= shifts.Count ? Cell.Rpm(shifts[row.Number - 1].At, composition) : Cell.Empty,
                row.Number <= shifts.Count ? Cell.Rpm(shifts[row.Number - 1].Lands, composition) : Cell.Empty,
            ]));
    }

    private static TableDraft Changes(EventGearing? gearing, Composition composition) => new TableDraft(
        "changes",
        composition.Say("gearing.change"),
        [composition.Say("gearing.head.change"), composition.Say("gearing.head.change_loss"), composition.Say("life.data.driver"), composition.Say("life.data.driven"), composition.Say("life.data.final")],
        gearing is null ? [] : gearing.Ranking.Changes.Select(c => (IReadOnlyList<Cell>)
        [
            Cell.Of(GearingWords.Change(c.Change, composition)),
            ChangeRow.LossOf(c, gearing.Best) is { } loss ? Cell.Seconds(loss, 3, composition) : Cell.Of(composition.Say("gearing.not_finished")),
            Teeth(c.Candidates[0].DropPair?.Driver),
            Teeth(c.Candidates[0].DropPair?.Driven),
            Cell.Pure(c.Candidates[0].FinalDrive.Ratio, 3, composition),
        ]));

    private static TableDraft Dogs(EventGearing? gearing, ReportContext report)
    {
        var composition = report.Composition;
        var wear = DogLoad.WearByGear(report.Assessment.Findings);
        return new TableDraft(
            "dogs",
            composition.Say("gearing.dogs.title"),
            [composition.Say("gearing.head.gear"), composition.Say("gearing.dogs.work"), composition.Say("gearing.dogs.wear")],
            (gearing?.Dogs?.ByGear ?? []).Select((work, i) => (IReadOnlyList<Cell>)
            [
                Cell.Of(work.Ring), Cell.Percent(work.Share, composition), wear.TryGetValue(i + 1, out var used) ? Cell.Percent(used, composition) : Cell.Empty,
            ]));
    }

    private static Cell Teeth(int? teeth) => teeth is { } count ? Cell.Count(count) : Cell.Empty;
}
