using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Reference;

namespace Layshaft.Site.Building;

/// <summary>The public gearing pages.</summary>
internal static class ReferenceFiles
{
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
