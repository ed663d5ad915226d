using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Reference;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>The public gearing pages.</summary>
internal static class ReferenceFiles
{
    /// <summary>What anyone may read: gearboxes, cars and venues, without jobs and customers.</summary>
    /// <param name="composition">What pages are composed from, without jobs.</param>
    /// <param name="hashes">Hashes of the book's files.</param>
    /// <param name="site">The hash of templates, texts and keys.</param>
    public static PageScope ScopeOf(Composition composition, BookHashes hashes, PlanInput site)
    {
        var book = composition.Book with { Jobs = [], Customers = new Dictionary<string, Customer>() };
        var paths = hashes.WithoutJobs().Where(p => !p.StartsWith("customers/", StringComparison.Ordinal));
        return new PageScope("reference", [hashes.InputOf("public slice of the book", paths, composition.Pictures), site], () => composition with
        {
            Assessment = new BookAssessment(book, new Dictionary<string, JobAssessment>(), LifeAssessment.None(book), composition.Assessment.Gearing.Within(book), []),
        });
    }

    /// <summary>Every file of them.</summary>
    /// <param name="scope">What they may quote.</param>
    /// <param name="page">Makes a page's file of its path, its template and what composes it.</param>
    public static IEnumerable<SiteFile> Of(PageScope scope, Func<string, string, Func<object>, SiteFile> page)
    {
        var subjects = ReferenceSubject.All(scope.Composition);
        yield return page(Addresses.ReferenceIndex, ReferenceComposer.IndexTemplate, () => ReferenceComposer.Index(scope.Composition, subjects));
        foreach (var subject in subjects)
        {
            yield return page(Addresses.ReferencePage(subject.Id), ReferenceComposer.Template, () => ReferenceComposer.Page(scope.Composition, subject));
            foreach (var file in SheetFiles.Beside(Addresses.ReferencePage(subject.Id), () => subject.Name, ReferenceTables.Names, () => ReferenceTables.Of(scope.Composition, subject), scope))
            {
                yield return file;
            }

            for (var i = 0; i < subject.Tyres.Count; i++)
            {
                var tyre = i;
                yield return page(Addresses.WallPage(subject.Id, tyre), WallComposer.Template, () => WallComposer.Compose(scope.Composition, subject, tyre));
                foreach (var file in SheetFiles.Beside(Addresses.WallPage(subject.Id, tyre), () => subject.Name, ReferenceTables.Names, () => ReferenceTables.OfWall(scope.Composition, subject, tyre), scope))
                {
                    yield return file;
                }
            }
        }
    }
}
