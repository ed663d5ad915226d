using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Report;

/// <summary>Says what a customer's report on a job says, in the order in which a customer asks.</summary>
public static class ReportComposer
{
    /// <summary>The template of a report.</summary>
    public const string Template = "report.html";

    /// <summary>Composes the report on a job for an owner of its unit.</summary>
    /// <param name="composition">What pages are composed from.</param>
    /// <param name="view">Whose report it is.</param>
    /// <param name="job">A finished job that he may see.</param>
    public static ReportPage Compose(Composition composition, OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        composition = composition.About(composition.Book.GearboxOf(view.Unit));
        var report = new ReportContext(composition, view, composition.Assessment.Jobs[job.Number]);
        var heading = composition.Say("report.heading", ("number", job.Number));
        return new ReportPage(
            PageFrame.Head(
                composition,
                report.Page,
                composition.Say("report.title", ("number", job.Number), ("unit", report.Unit.Serial), ("shop", composition.Shop.Name)),
                job.Verdict,
                rules: PrintSheet.Stylesheet(composition, view, job),
                links: new LinkView(Addresses.Link(report.Page, composition.Addresses.History(view)), composition.Say("report.to_history"))) with
            { Preview = CardComposer.Preview(composition, view, job) },
            heading,
            TitleBlockOf(report),
            job.Verdict ?? string.Empty,
            ReturnWords.WithReason(job, composition),
            Tally(report),
            [.. ReportSections.All(report)],
            PageFrame.Foot(composition));
    }

    /// <summary>The title block of a job.</summary>
    public static TitleBlock TitleBlockOf(ReportContext report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var (composition, job) = (report.Composition, report.Job);
        var technician = composition.Shop.Technicians.FirstOrDefault(t => t.Id == job.Technician)?.Name;
        var cells = new List<NamedValue>
        {
            new(composition.Say("block.received"), composition.Figures.Date(job.Received)),
            job is { Finished: null, Stripped: { } stripped }
                ? new(composition.Say("block.stripped"), composition.Figures.Date(stripped))
                : new(composition.Say("block.finished"), job.Finished is { } finished ? composition.Figures.Date(finished) : composition.Say("block.open")),
            new(composition.Say("block.use"), UseWords.Of(job.Use, composition)),
        };
        if (technician is not null)
        {
            cells.Add(new(composition.Say("block.technician"), technician));
        }

        if (report.IsOwn)
        {
            cells.Add(new(composition.Say("block.customer"), composition.Book.Customers[report.View.Unit.OwnerOn(job.Received).Customer].Name));
        }

        if (report is { IsOwn: true, Job.Charged.Count: > 0 } && job.Finished is not null && composition.Shop.ShowPrices)
        {
            cells.Add(new(
                composition.Say(composition.Shop.Tax is null ? "money.sum" : "money.gross"),
                MoneyTable.Amount(JobMoney.Of(job, report.Gearbox, composition.Shop).Invoiced.Gross, composition)));
        }

        return new TitleBlock(
            composition.Say("block.unit"),
            composition.Say("block.unit_value", ("serial", report.Unit.Serial), ("gearbox", report.Gearbox.Name)),
            cells);
    }

    private static IReadOnlyList<TallyView> Tally(ReportContext report) =>
    [
        .. new[] { Grade.Reuse, Grade.Watch, Grade.Renew }
            .Select(g => (Grade: g, Count: report.Assessment.Findings.Count(f => f.Grade == g)))
            .Where(g => g.Count > 0)
            .Select(g => new TallyView(GradeViews.Of(g.Grade, report.Composition), report.Composition.Say("report.tally", ("count", g.Count)))),
    ];
}
