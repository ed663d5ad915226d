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

    // Every combination, where the page draws the first few. Times are no finer than their uncertainty allows.
    private static TableDraft Ranking(EventGearing? gearing, Composition composition) => new TableDraft(
        "ranking",
        composition.Say("life.data.ranking"),
        [
            composition.Say("gearing.head.place"), composition.Say("gearing.head.loss"), composition.Say("gearing.head.uncertainty"), composition.Say("life.data.driver"), composition.Say("life.data.driven"),
            composition.Say("life.data.final"), composition.Say("gearing.head.top"), composition.Say("life.data.straight"), composition.Say("gearing.head.gear"),
            composition.Say("gearing.head.rpm"), composition.Say("gearing.head.limiter"), composition.Say("gearing.head.ideal"),
            composition.Say("gearing.head.shifts"), composition.Say("gearing.head.corners"), composition.Say("gearing.head.limits"), composition.Say("life.data.what"),
            composition.Say("gearing.head.pairs"),
        ],
        gearing is null ? [] : gearing.Ranking.Candidates.Select((c, i) => Row(c, i + 1, gearing, composition)));

    private static IReadOnlyList<Cell> Row(GearingCandidate candidate, int place, EventGearing gearing, Composition composition)
    {
        // Far behind, a tenth is what the inputs resolve, and the runs for its uncertainty are saved.
        var best = gearing.Advice.Recommended;
        var isNear = best is not null && candidate.IsFinished && candidate.LossToBest.Seconds <= gearing.Ranking.Reach.Seconds / 2;
        var difference = isNear ? gearing.Ranking.Difference(candidate, best!) : null;
        string[] corners = [.. candidate.CornersBetweenGears.Select(s => gearing.Case.Track.Before(s)?.Corner).OfType<string>()];
        var unfinished = Cell.Of(composition.Say("gearing.not_finished"));
        return
        [
            candidate is { IsUsable: true, IsStocked: true } ? Cell.Count(place) : candidate.IsStocked ? Cell.Empty : Cell.Of(composition.Say("gearing.row.not_stocked")),
            difference is not null ? Cell.Seconds(difference.Value, difference.Decimals, composition)
                : !candidate.IsFinished ? unfinished
                : best is not null ? Cell.Seconds(candidate.StraightsTime - best.StraightsTime, 1, composition) : Cell.Empty,
            difference is not null ? Cell.Seconds(difference.Expanded, difference.Decimals, composition) : Cell.Empty,
            Teeth(candidate.DropPair?.Driver),
            Teeth(candidate.DropPair?.Driven),
            Cell.Pure(candidate.FinalDrive.Ratio, 3, composition),
            Cell.Speed(candidate.TopSpeed, 0, composition),
            Cell.Of(candidate.TopSpeedStraight),
            Cell.Count(candidate.TopSpeedGear),
            Cell.Rpm(candidate.EngineSpeedAtTop, composition),
            Cell.Seconds(candidate.OnLimiter, 1, composition),
            candidate.IsFinished ? Cell.Seconds(candidate.LossToIdeal, 1, composition) : unfinished,
            Cell.Pure(candidate.ShiftsPerLap, 0, composition),
            Cell.Of(corners.Length > 0 ? string.Join(", ", corners) : null),
            Cell.Of(candidate.PassedLimits.Count > 0 ? GuardWords.Limits(candidate, composition) : null),
            Cell.Of(NamesOf(candidate, gearing, composition)),
            Cell.Of(GearingWords.ChangedPairs(candidate.Set, gearing.Case, composition)),
        ];
    }

    private static string? NamesOf(GearingCandidate candidate, EventGearing gearing, Composition composition)
    {
        string?[] names =
        [
            candidate.Set == gearing.Advice.Recommended?.Set ? composition.Say("gearing.row.best") : null,
            candidate.Set == gearing.Advice.Fitted?.Set ? composition.Say("gearing.row.fitted") : null,
        ];
        return names.Any(n => n is not null) ? string.Join(", ", names.OfType<string>()) : null;
    }

    private static TableDraft Shifts(EventGearing? gearing, Composition composition)
    {
        var car = gearing?.Advice.Recommended is { } best ? gearing.Case.With(best.Set) : null;
        var shifts = car is null ? [] : UpshiftPlan.For(car.Drivetrain, car.Engine);
        return new TableDraft(
            "shifts",
            composition.Say("gearing.shifts_data"),
            [composition.Say("gearing.head.gear"), composition.Say("gearing.head.maximum_speed"), composition.Say("gearing.head.upshift"), composition.Say("gearing.head.drops_to")],
            car is null ? [] : GearingCharts.TableOf(car).Rows.Select(row => (IReadOnlyList<Cell>)
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
        [composition.Say("gearing.head.change"), composition.Say("gearing.head.change_loss"), composition.Say("life.data.driver"), composition.Say("life.data.driven"), composition.Say("life.data.final"), composition.Say("gearing.head.pairs")],
        gearing?.Advice.Recommended is null ? [] : gearing.Ranking.Changes.Select(c => ChangeRow(c.Change, gearing, composition)));

    // Only what the inputs can resolve: on a day on which nothing is better than the recommended gears, they are the best.
    private static IReadOnlyList<Cell> ChangeRow(ConditionChange change, EventGearing gearing, Composition composition)
    {
        var advice = gearing.Advice;
        var better = advice.Better.FirstOrDefault(b => b.Change == change);
        var best = better?.Set ?? advice.Recommended!;
        return
        [
            Cell.Of(GearingWords.Change(change, composition)),
            better is { Loss: null } ? Cell.Of(composition.Say("gearing.not_finished")) : better?.Loss is { } loss ? Cell.Seconds(loss.Value, loss.Decimals, composition) : Cell.Seconds(UnitsNet.Duration.Zero, 0, composition),
            Teeth(best.DropPair?.Driver),
            Teeth(best.DropPair?.Driven),
            Cell.Pure(best.FinalDrive.Ratio, 3, composition),
            Cell.Of(GearingWords.ChangedPairs(best.Set, gearing.Case, composition)),
        ];
    }

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
