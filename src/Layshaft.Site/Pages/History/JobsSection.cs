using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Charts;
using Layshaft.Site.Charts.Life;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;
using EngineSeason = Layshaft.Engineering.Life.Season;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Pages.History;

/// <summary>The seasons of a unit: every job on a line, each with the way to its report.</summary>
internal static class JobsSection
{
    public static SectionView? Compose(HistoryContext history, TableView jobs, TableView seasons)
    {
        var composition = history.Composition;
        if (history.Jobs.Count == 0)
        {
            return BlocksView.Section("seasons", composition.Say("history.seasons"), Block.Say(composition.Say("history.no_jobs")));
        }

        return BlocksView.Section(
            "seasons",
            composition.Say("history.seasons"),
            [.. Caution(history), new Block { Chart = Line(history) }, new Block { Table = jobs }, .. Declined(history), .. seasons.Rows.Count > 0 ? [new Block { Table = seasons }] : Array.Empty<Block>()]);
    }

    // The owner's own jobs only: what another was offered is not for them.
    private static IEnumerable<Block> Declined(HistoryContext history)
    {
        string[] lines =
        [
            .. history.Jobs.Select(j => j.Job).Where(history.View.IsOwn).Reverse().SelectMany(j => DeclinedLines.Of(j, history.Gearbox, history.Composition)
                .Select(l => history.Composition.Say("history.declined.line", ("number", j.Number), ("words", l)))),
        ];
        return lines.Length > 0 ? [new Block { Heading = history.Composition.Say("offer.declined_work"), Items = lines }] : [];
    }

    // A declined job has no report of its own: its caution is the first thing on the history, until the unit comes in again.
    private static IEnumerable<Block> Caution(HistoryContext history) =>
        history.Jobs[^1].Job is { Stage: JobStage.Declined } job && history.View.IsOwn(job) && DeclinedLines.Caution(job.Offers.SelectMany(o => o.Declined), history.Composition) is { } caution
            ? [new Block { Items = [caution], IsCaution = true }]
            : [];

    public static TableView Table(HistoryContext history)
    {
        var composition = history.Composition;
        return TableView.Of(
            "jobs",
            composition.Say("history.jobs.caption"),
            [
                composition.Say("history.job"), composition.Say("history.received"), composition.Say("history.finished"), composition.Say("history.use_then"),
                composition.Say("history.worst"), composition.Say("history.renewed"), composition.Say("history.verdict"),
            ],
            history.Jobs.Reverse().Select(j => (IReadOnlyList<Cell>)
            [
                history.LinkTo(j.Job) is { } link ? Cell.To(j.Job.Number, link) : Cell.Of(j.Job.Number),
                Cell.Day(j.Job.Received, composition),
                j.Job.Finished is null ? Cell.Of(composition.Say("history.on_the_bench")) : Cell.Day(j.Job.Finished, composition),
                Cell.Use(new EngineUse((double)j.Job.Use.Amount, Assessment.Lives.UseMeasures.Measure(j.Job.Use.Unit)), composition),
                Cell.Of(Worst(j) is { } grade ? GradeViews.Of(grade, composition) : null),
                Cell.Count(j.Job.Renewed.Count),
                Cell.Of(j.Job.Finished is null ? null : j.Job.Verdict),
            ]));
    }

    public static TableView Seasons(HistoryContext history)
    {
        var composition = history.Composition;
        var use = history.Lives.UseOf(history.Unit);
        return TableView.Of(
            "seasons",
            composition.Say(history.HasSeason ? "history.seasons.caption.season" : "history.seasons.caption"),
            [composition.Say(history.HasSeason ? "history.season.season" : "history.season"), composition.Say("history.ran")],
            use.Seasons.Select(s => (IReadOnlyList<Cell>)[Cell.Of(s.Season.ToString()), Cell.Use(new EngineUse(s.Amount, use.Measure), composition)]));
    }

    private static Html.RawHtml Line(HistoryContext history)
    {
        var composition = history.Composition;
        var calendar = composition.Shop.Season;
        var frame = new ChartFrame("seasons-line", composition.Say("history.seasons"), composition.Say("history.line.description", ("count", history.Jobs.Count)));
        return ChartPair.Of(
            new SeasonLineInput(
                frame,
                [.. Shown(calendar, history.Unit.InService, history.Lives.LastUse(history.Unit).Date).Select(s => new ChartSeason(calendar.FirstDay(s).DayNumber, calendar.LastDay(s).DayNumber, s.ToString()))],
                [.. history.Jobs.Select(j => Mark(j, history))]),
            (input, size) => SeasonLine.Draw(input with { Frame = frame with { IdPrefix = $"seasons-line-{size.ToString().ToLowerInvariant()}" } }, size));
    }

    // A unit that comes in between two seasons belongs to the one before by its date, but never ran in it: the line starts with the next.
    private static EngineSeason[] Shown(Engineering.Life.SeasonCalendar calendar, DateOnly from, DateOnly to)
    {
        EngineSeason[] all = [.. calendar.Between(from, to)];
        EngineSeason[] ran = [.. all.SkipWhile(s => calendar.LastDay(s) < from)];
        return ran.Length > 0 ? ran : all;
    }

    private static JobMark Mark(JobAssessment job, HistoryContext history)
    {
        var composition = history.Composition;
        var what = job.Job.Finished is null ? composition.Say("history.mark.open")
            : composition.Say("history.mark.renewed", ("count", job.Job.Renewed.Count));
        var words = composition.Say("history.mark", ("date", composition.Figures.Date(job.Job.Received)), ("use", UseWords.Of(job.Job.Use, composition)), ("what", what));
        return new JobMark(
            job.Job.Received.DayNumber,
            words,
            history.LinkTo(job.Job),
            composition.Say("history.mark.link", ("number", job.Job.Number), ("words", words)),
            Worst(job) is { } grade ? GradeViews.Mark(grade, composition) : null);
    }

    private static Grade? Worst(JobAssessment job) => job.Findings.Select(f => (Grade?)f.Grade).Max();
}
