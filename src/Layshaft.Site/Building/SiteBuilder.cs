using System.Collections.Concurrent;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
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

    private readonly ConcurrentDictionary<Place, Problem> damaged = new();

    /// <summary>The pictures that turned out to be damaged when files of the site were made from them.</summary>
    internal IEnumerable<Problem> Damaged => damaged.Values;

    /// <summary>What pages are composed from.</summary>
    public Composition Composition => composition;

    /// <summary>Renders templates.</summary>
    public TemplateEngine Engine => engine;

    /// <summary>The book's files.</summary>
    public IBookFiles BookFiles => files;

    /// <summary>The site as the publisher plans it.</summary>
    public SitePlan Plan() => SitePlan.Of(Files().Select((f, i) => f.ToPlan(i)));

    /// <summary>All files, by tree and page. What a file may quote, and with it when it is made anew, is its scope.</summary>
    public IEnumerable<SiteFile> Files()
    {
        var parts = new BookParts(composition, files, fingerprint);
        var shop = parts.Whole("shop");
        var look = new PageScope("look", shop.Inputs, () => composition);
        var open = parts.Public();
        foreach (var file in Trees.SelectMany(t => Look(t, look)).Concat(ShopFiles(shop)).Concat(ReferenceFiles.Of(open, (p, t, c) => Page(p, t, c, open))))
        {
            yield return file;
        }

        yield return Page(Addresses.Terms, TermsPage.Template, () => TermsPage.Compose(open.Composition), open);
        foreach (var (scope, units) in parts.Clusters())
        {
            foreach (var unit in units)
            {
                var views = OwnerView.Of(composition.Book, unit);
                foreach (var file in views.SelectMany(v => History(v, scope).Concat(v.Jobs.SelectMany(j => JobFiles(v, j, scope)))))
                {
                    yield return file;
                }

                foreach (var job in composition.Book.JobsOf(unit.Id))
                {
                    OwnerView[] readers = [.. views.Where(v => v.Jobs.Contains(job) && JobPages.Exists(v, job))];
                    foreach (var file in PictureFiles.Of(job, readers, scope, composition, files, p => damaged[p.Place] = p))
                    {
                        yield return file;
                    }
                }
            }
        }
    }

    /// <summary>What the page of one job consists of: itself, its data, and the look of the customers' pages.</summary>
    /// <param name="view">Whose page it is.</param>
    /// <param name="job">A job that he may see.</param>
    public IEnumerable<SiteFile> FilesOf(OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        var scope = new PageScope($"job {job.Number}", [], () => composition);
        return Look(Addresses.Customers, scope).Concat(JobFiles(view, job, scope));
    }

    // A job has a page once there is something to read: an estimate to answer, then the report in its place.
    private IEnumerable<SiteFile> JobFiles(OwnerView view, Job job, PageScope scope)
    {
        if (!JobPages.Exists(view, job))
        {
            yield break;
        }

        var path = composition.Addresses.Report(view, job);
        yield return job.Finished is not null
            ? Page(path, ReportComposer.Template, () => ReportComposer.Compose(scope.Composition, view, job), scope)
            : Page(path, EstimateComposer.Template, () => EstimateComposer.Compose(scope.Composition, view, job), scope);
        foreach (var card in CardFiles.Of(composition, view, job, scope))
        {
            yield return card;
        }

        var title = () => composition.Say("report.title", ("number", job.Number), ("unit", view.Unit.Serial), ("shop", composition.Shop.Name));
        foreach (var file in SheetFiles.Beside(path, title, ReportTables.Names, () => ReportTables.Of(scope.Composition, view, job), scope))
        {
            yield return file;
        }
    }

    private IEnumerable<SiteFile> History(OwnerView view, PageScope scope) =>
        SheetFiles.Of(composition.Addresses.History(view), HistoryComposer.Tables, () => HistoryComposer.Compose(scope.Composition, view), engine, scope)
            .Concat(CardFiles.Of(composition, view, scope));

    private IEnumerable<SiteFile> ShopFiles(PageScope scope)
    {
        var context = new Lazy<ShopContext>(() => ShopContext.Of(composition));
        return ShopPageList.All.SelectMany(p => ShopFiles(p, scope, context));
    }

    private IEnumerable<SiteFile> ShopFiles(ShopPage page, PageScope scope, Lazy<ShopContext> context)
    {
        // One page at a time would leave all processors but one idle.
        var own = new PageScope(page.Path, scope.Inputs, () => composition);
        return SheetFiles.Of(page.Path, page.Tables, () => page.Compose(context.Value), engine, own);
    }

    private IEnumerable<SiteFile> Look(string tree, PageScope scope)
    {
        foreach (var file in LogoFile.Of(tree, scope, composition, files))
        {
            yield return file;
        }

        foreach (var file in LookFiles.In(folders).Where(f => !PageStyles.Sheets.Contains(f.Name)))
        {
            yield return new SiteFile($"{tree}/look/{file.Name}", scope, () => MadeFile.Of(file.Read())) { Inputs = [new PlanInput(file.Name, file.Hash)] };
        }
    }

    private SiteFile Page(string path, string template, Func<object> compose, PageScope scope) => new(path, scope, () => MadeFile.Of(engine.Render(template, compose())));
}
