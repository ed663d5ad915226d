using System.Text;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Reference;

namespace Layshaft.Site.Building;

/// <summary>The public gearing pages.</summary>
internal static class ReferenceFiles
{
    /// <summary>Every file of them.</summary>
    /// <param name="composition">What pages are composed from.</param>
    /// <param name="page">Makes a page's file of its path, its template and what composes it.</param>
    public static IEnumerable<SiteFile> Of(Composition composition, Func<string, string, Func<object>, SiteFile> page)
    {
        var subjects = ReferenceSubject.All(composition);
        yield return page(Addresses.ReferenceIndex, ReferenceComposer.IndexTemplate, () => ReferenceComposer.Index(composition, subjects));
        foreach (var subject in subjects)
        {
            yield return page(Addresses.ReferencePage(subject.Id), ReferenceComposer.Template, () => ReferenceComposer.Page(composition, subject));
            foreach (var file in SheetFiles.Beside(Addresses.ReferencePage(subject.Id), () => subject.Name, ReferenceTables.Names, () => ReferenceTables.Of(composition, subject), composition))
            {
                yield return file;
            }

            yield return new SiteFile(Addresses.ReferenceSheet(subject.Id), () => MadeFile.Of(Encoding.UTF8.GetBytes(ReferenceChoices.Stylesheet(subject))));
            for (var i = 0; i < subject.Tyres.Count; i++)
            {
                var tyre = i;
                yield return page(Addresses.WallPage(subject.Id, tyre), WallComposer.Template, () => WallComposer.Compose(composition, subject, tyre));
                foreach (var file in SheetFiles.Beside(Addresses.WallPage(subject.Id, tyre), () => subject.Name, ReferenceTables.Names, () => ReferenceTables.OfWall(composition, subject, tyre), composition))
                {
                    yield return file;
                }
            }
        }
    }
}
