using System.Collections.Concurrent;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>Lists every file of the site of a book that is in memory as a whole: which page is where, and how it is made.</summary>
/// <param name="composition">What pages are composed from.</param>
/// <param name="engine">Renders templates.</param>
/// <param name="files">The book's files, for its pictures.</param>
/// <param name="folders">The template folders, for stylesheets and fonts.</param>
/// <param name="fingerprint">Stands for everything that pages are composed from: templates, texts and keys.</param>
public sealed class SiteBuilder(Composition composition, TemplateEngine engine, IBookFiles files, TemplateFolders folders, string fingerprint)
{
    private readonly ConcurrentDictionary<Place, Problem> damaged = new();

    /// <summary>The pictures that turned out to be damaged when files of the site were made from them.</summary>
    internal IEnumerable<Problem> Damaged => damaged.Values;

    /// <summary>What pages are composed from.</summary>
    public Composition Composition => composition;

    /// <summary>Renders templates.</summary>
    public TemplateEngine Engine => engine;

    /// <summary>The book's files.</summary>
    public IBookFiles BookFiles => files;

    private SharedFiles Shared => new(composition, engine, files, folders);

    private CustomerFiles Customers => new(engine, files, p => damaged[p.Place] = p);

    /// <summary>The site as the publisher plans it.</summary>
    public SitePlan Plan() => SitePlan.Of(Files().Select((f, i) => f.ToPlan(i))).For(LinkReaders.Of(composition));

    /// <summary>All files, by tree and page. All may quote from the whole book.</summary>
    public IEnumerable<SiteFile> Files()
    {
        var hashes = new BookHashes(files);
        PlanInput[] inputs = [hashes.InputOf("book", files.All.Select(f => f.Path), composition.Pictures), new PlanInput("site", fingerprint)];
        var shop = new Lazy<ShopContext>(() => ShopContext.Of(composition));
        PageScope Scope(string name) => new(name, inputs, () => composition);
        var pool = new Lazy<WearPool>(() => new WearPool(WearTally.Of(composition.Assessment), BookDay.OfJobs(composition.Book.Jobs)));
        PageScope ScopeOf(Unit unit) => new(Slice.NameOf(unit.Id), inputs, () => composition with { Others = pool.Value.For([unit.Id]) });
        return Shared.Look(Scope("look"))
            .Concat(ShopPageList.All.SelectMany(p => Shared.Shop(p, () => shop.Value, Scope(p.Path))))
            .Concat(Shared.Reference(Scope("reference")))
            .Concat(composition.Book.Units.Values.SelectMany(u => Customers.Of(composition, [u], ScopeOf(u))));
    }

    /// <summary>What the page of one job consists of: itself, its data, and the look of the customers' pages.</summary>
    /// <param name="view">Whose page it is.</param>
    /// <param name="job">A job that he may see.</param>
    public IEnumerable<SiteFile> FilesOf(OwnerView view, Job job)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(job);
        var scope = new PageScope($"job {job.Number}", [], () => composition);
        return Shared.Look(Addresses.Customers, scope).Concat(Customers.OfJob(composition, view, job, scope));
    }
}
