using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Cards;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.History;
using Layshaft.Site.Pages.LapSheets;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>Lists the files of customers' pages: histories, reports, estimates, what stands beside them, pictures; and the sheets of jobs on the bench.</summary>
/// <param name="engine">Renders templates.</param>
/// <param name="files">The book's files, for its pictures.</param>
/// <param name="damaged">Takes the problem of a picture that turns out to be damaged when it is decoded.</param>
internal sealed class CustomerFiles(TemplateEngine engine, IBookFiles files, Action<Problem> damaged)
{
    /// <summary>All files of some units.</summary>
    /// <param name="composition">What tells which files there are: the whole book or the slice.</param>
    /// <param name="units">The units.</param>
    /// <param name="scope">What the files may quote.</param>
    public IEnumerable<SiteFile> Of(Composition composition, IReadOnlyList<Unit> units, PageScope scope)
    {
        foreach (var unit in units)
        {
            var views = OwnerView.Of(composition.Book, unit);
            foreach (var file in views.SelectMany(v => History(composition, v, scope).Concat(v.Jobs.SelectMany(j => OfJob(composition, v, j, scope)))))
            {
                yield return file;
            }

            foreach (var job in composition.Book.JobsOf(unit.Id))
            {
                if (ShopContext.IsOnTheBench(job, composition.Book))
                {
                    yield return Page(Addresses.BenchSheet(job), BenchSheet.Template, () => BenchSheet.Compose(scope.Composition, unit, job), scope);
                }

                OwnerView[] readers = [.. views.Where(v => v.Jobs.Contains(job) && JobPages.Exists(v, job))];
                foreach (var file in PictureFiles.Of(job, readers, scope, composition, files, damaged))
                {
                    yield return file;
                }
            }
        }
    }

    /// <summary>
    /// The files of a job's page without its pictures. A job has a page once there is something to read: an estimate to answer,
    /// then the report in its place.
    /// </summary>
    public IEnumerable<SiteFile> OfJob(Composition composition, OwnerView view, Job job, PageScope scope)
    {
        if (!JobPages.Exists(view, job))
        {
            yield break;
        }

        var path = composition.Addresses.Report(view, job);
        yield return job.Finished is not null
            ? Page(path, ReportComposer.Template, () => ReportComposer.Compose(scope.Composition, view, job), scope)
            : Page(path, EstimateComposer.Template, () => EstimateComposer.Compose(scope.Composition, view, job), scope);
        foreach (var card in Cards(composition, composition.Addresses.Card(view, job), () => CardComposer.Of(scope.Composition, view, job), scope))
        {
            yield return card;
        }

        var title = () => scope.Composition.About(scope.Composition.Book.GearboxOf(view.Unit)).Say("report.title", ("number", job.Number), ("unit", view.Unit.Serial), ("shop", scope.Composition.Shop.Name));
        foreach (var file in SheetFiles.Beside(path, title, ReportTables.Names, () => ReportTables.Of(scope.Composition, view, job), scope))
        {
            yield return file;
        }

        if (LapSheetComposer.Exists(composition, view, job))
        {
            foreach (var file in SheetFiles.Of(composition.Addresses.LapSheet(view, job), LapSheetComposer.Tables, () => LapSheetComposer.Compose(scope.Composition, view, job), engine, scope))
            {
                yield return file;
            }
        }
    }

    private IEnumerable<SiteFile> History(Composition composition, OwnerView view, PageScope scope) =>
        SheetFiles.Of(composition.Addresses.History(view), HistoryComposer.Tables, () => HistoryComposer.Compose(scope.Composition, view), engine, scope)
            .Concat(Cards(composition, composition.Addresses.Card(view), () => CardComposer.Of(scope.Composition, view), scope));

    private SiteFile Page(string path, string template, Func<object> compose, PageScope scope) => new(path, scope, () => MadeFile.Of(engine.Render(template, compose())));

    // A preview image is drawn only for a workshop that gives the address of its site, since nobody could ask for it otherwise. The
    // scope of its page covers all that it says, so an image that is kept is not even composed.
    private static IEnumerable<SiteFile> Cards(Composition composition, string path, Func<CardView> card, PageScope scope) =>
        composition.Shop.SiteAddress is null ? [] : [new SiteFile(path, scope, () => MadeFile.Of(CardPicture.Png(card())))];
}
