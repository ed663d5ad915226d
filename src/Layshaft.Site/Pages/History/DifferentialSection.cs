using Layshaft.Site.Pages.Tables;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.History;

/// <summary>Ramps and plates of the differential, job by job.</summary>
internal static class DifferentialSection
{
    public static SectionView? Compose(HistoryContext history, TableView table) => table.Rows.Count == 0
        ? null
        : BlocksView.Section("differential", history.Composition.Say("differential.heading"), new Block { Table = table });

    public static TableView Table(HistoryContext history)
    {
        var composition = history.Composition;
        return TableView.Of(
            "differential",
            composition.Say("history.differential.caption"),
            [
                composition.Say("history.job"), composition.Say("history.received"), composition.Say("history.differential.found"),
                composition.Say("history.differential.built"), composition.Say("differential.faces"),
            ],
            history.View.Jobs.Where(j => j.Differential is not null).Select(j => (Job: j, j.Differential!.Found, j.Differential.Built)).Select(j => (IReadOnlyList<Cell>)
            [
                Cell.Of(j.Job.Number), Cell.Day(j.Job.Received, composition), Build(j.Found), Build(j.Built),
                (j.Built ?? j.Found) is { } last ? Cell.Count(last.Plates.Faces) : Cell.Empty,
            ]));
    }

    private static Cell Build(Book.Records.DifferentialBuild? build) => build is null ? Cell.Empty : Cell.Of($"{build.Ramps}, {build.Plates}");
}
