using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.History;

/// <summary>Which gearing was in the unit when. Where an earlier owner raced is his.</summary>
internal static class GearingSection
{
    public static SectionView? Compose(HistoryContext history, TableView table) => table.Rows.Count == 0
        ? null
        : BlocksView.Section("gearing", history.Composition.Say("history.gearing"), new Block { Table = table });

    public static TableView Table(HistoryContext history)
    {
        var composition = history.Composition;
        return TableView.Of(
            "gearing",
            composition.Say("history.gearing.caption"),
            [composition.Say("history.when"), composition.Say("history.day"), composition.Say("history.drop_pair"), composition.Say("history.final_drive")],
            Steps(history).OrderBy(s => s.Day ?? DateOnly.MaxValue).Select(s => (IReadOnlyList<Cell>)
            [
                Cell.Of(s.What), Cell.Day(s.Day, composition), Cell.Of(s.DropPair?.ToString()), Cell.Of(s.FinalDrive?.ToString()),
            ]));
    }

    private static IEnumerable<(string What, DateOnly? Day, Teeth? DropPair, Teeth? FinalDrive)> Steps(HistoryContext history)
    {
        var composition = history.Composition;
        yield return (composition.Say("history.gearing.start"), history.Unit.InService, history.Unit.DropPair, history.Unit.FinalDrive);
        foreach (var job in history.View.Jobs)
        {
            if (history.View.IsOwn(job))
            {
                foreach (var plan in new[] { job.LastEvent, job.NextEvent }.OfType<EventPlan>().Where(p => p.DropPair is not null || p.FinalDrive is not null))
                {
                    yield return (EventWords(plan, composition), plan.On, plan.DropPair, plan.FinalDrive);
                }
            }

            if (job.DropPair is not null || job.FinalDrive is not null)
            {
                yield return (composition.Say("history.gearing.left", ("number", job.Number)), job.Finished ?? job.Received, job.DropPair, job.FinalDrive);
            }
        }
    }

    private static string EventWords(EventPlan plan, Composition composition)
    {
        var venue = composition.Book.Venues[plan.Venue].Name;
        return plan.Name is { } name ? composition.Say("history.gearing.event", ("name", name), ("venue", venue)) : venue;
    }

}
