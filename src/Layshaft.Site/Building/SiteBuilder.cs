using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Look;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.History;
using Layshaft.Site.Pages.Reference;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>Lists every file of the site: which page is where, and how it is made.</summary>
/// <param name="composition">What pages are composed from.</param>
/// <param name="engine">Renders templates.</param>
/// <param name="files">The book's files, for its pictures.</param>
/// <param name="folders">The template folders, for stylesheets and fonts.</param>
/// <param name="fingerprint">Stands for everything that pages are composed from: templates, texts and keys.</param>
public sealed class SiteBuilder(Composition composition, TemplateEngine engine, IBookFiles files, TemplateFolders folders, string fingerprint)
{
    private static readonly string[] Trees = [Addresses.Customers, Addresses.Shop, Addresses.Reference];

    /// <summary>The site as the publisher plans it.</summary>
    public SitePlan Plan()
    {
        PlanInput[] everything = [Fingerprints.OfBook(files), Fingerprints.OfPictures(composition.Pictures), new PlanInput("site", fingerprint)];
        return SitePlan.Of(Files().Select(f => f.ToPlan(everything)));
    }

    /// <summary>All files, by tree and page.</summary>
    public IEnumerable<SiteFile> Files()
    {
        foreach (var file in Trees.SelectMany(Look))
        {
            yield return file;
        }

        foreach (var file in ShopFiles())
        {
            yield return file;
        }

        foreach (var file in ReferenceFiles.Of(composition, Page))
        {
            yield return file;
        }

        yield return Page(Addresses.Terms, TermsPage.Template, () => TermsPage.Compose(composition));
        foreach (var unit in composition.Book.Units.Values)
        {
            foreach (var view in OwnerView.Of(composition.Book, unit))
            {
                foreach (var file in History(view).Concat(view.Jobs.SelectMany(j => JobFiles(view, j))))
                {
                    yield return file;
                }
            }
        }
    }

    // A job has a page once there is something to read: an estimate to answer, then the report in its place.
    private IEnumerable<SiteFile> JobFiles(OwnerView view, Job job)
    {
        if (job.Finished is not null)
        {
            yield return Page(composition.Addresses.Report(view, job), ReportComposer.Template, () => ReportComposer.Compose(composition, view, job));
        }
        else if (EstimateComposer.IsOpen(job) && view.IsOwn(job))
        {
            yield return Page(composition.Addresses.Report(view, job), EstimateComposer.Template, () => EstimateComposer.Compose(composition, view, job));
        }
        else
        {
            yield break;
        }

        var title = () => composition.Say("report.title", ("number", job.Number), ("unit", view.Unit.Serial), ("shop", composition.Shop.Name));
        foreach (var file in SheetFiles.Beside(composition.Addresses.Report(view, job), title, ReportTables.Names, () => ReportTables.Of(composition, view, job), composition))
        {
            yield return file;
        }

        yield return Text(
            composition.Addresses.PrintSheet(view, job),
            () => PrintSheet.Stylesheet(composition.Say("print.line", ("number", job.Number), ("unit", view.Unit.Serial), ("shop", composition.Shop.Name))));
        foreach (var photo in job.Photos.Where(p => ReportPictures.MaySee(p, view.IsOwn(job))))
        {
            foreach (var file in PictureFiles.Of(photo, view, job, composition, files))
            {
                yield return file;
            }
        }
    }

    private IEnumerable<SiteFile> History(OwnerView view) =>
        SheetFiles.Of(composition.Addresses.History(view), HistoryComposer.Tables, () => HistoryComposer.Compose(composition, view), engine, composition);

    private IEnumerable<SiteFile> ShopFiles() =>
        ShopPageList.All.SelectMany(p => SheetFiles.Of(p.Path, p.Tables, () => p.Compose(composition), engine, composition));

    private IEnumerable<SiteFile> Look(string tree)
    {
        yield return Text($"{tree}/look/shop.css", () => ShopColours.Stylesheet(composition.Shop));
        foreach (var file in LookFiles.In(folders))
        {
            yield return new SiteFile($"{tree}/look/{file.Name}", () => MadeFile.Of(file.Read())) { Inputs = [new PlanInput(file.Name, file.Hash)] };
        }
    }

    private SiteFile Page(string path, string template, Func<object> compose) => new(path, () =>
    {
        var rendered = engine.Render(template, compose());
        return new MadeFile(rendered.Html is { } html ? Encoding.UTF8.GetBytes(html) : null, rendered.Problems);
    });

    private static SiteFile Text(string path, Func<string> text) => new(path, () => MadeFile.Of(Encoding.UTF8.GetBytes(text())));
}
