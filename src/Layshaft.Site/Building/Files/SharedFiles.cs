using Layshaft.Book.Reading;
using Layshaft.Site.Look;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Reference;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.ShopPages;
using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>Lists the files that belong to no customer: the look of all pages, the shop's pages, the public ones.</summary>
/// <param name="composition">What pages are composed from; of its jobs none are needed.</param>
/// <param name="engine">Renders templates.</param>
/// <param name="files">The book's files, for the logo.</param>
/// <param name="folders">The template folders, for stylesheets and fonts.</param>
internal sealed class SharedFiles(Composition composition, TemplateEngine engine, IBookFiles files, TemplateFolders folders)
{
    private static readonly string[] Trees = [Addresses.Customers, Addresses.Shop, Addresses.Reference];

    /// <summary>The look of all pages.</summary>
    /// <param name="scope">What they may quote.</param>
    public IEnumerable<SiteFile> Look(PageScope scope)
    {
        SiteFile[] look = [.. Trees.SelectMany(t => Look(t, scope))];

        // No page of its own is in these, and some hosts list such a folder. Whose pages lie in customers/ is nobody's business.
        var bare = look.SelectMany(f => OutputPath.FoldersAbove(f.Path)).Distinct().Where(f => f is not (Addresses.Shop or Addresses.Reference) && !f.StartsWith($"{Addresses.Shop}/", StringComparison.Ordinal));
        return look.Concat(bare.Select(f => Page($"{f}/index.html", EmptyPage.Template, () => EmptyPage.Compose(scope.Composition), scope)));
    }

    /// <summary>The look of the pages in one tree.</summary>
    public IEnumerable<SiteFile> Look(string tree, PageScope scope)
    {
        foreach (var file in LogoFile.Of(tree, scope, composition, files))
        {
            yield return file;
        }

        foreach (var file in LookFiles.In(folders).Where(f => !PageStyles.Sheets.Contains(f.Name)))
        {
            yield return new SiteFile($"{tree}/look/{file.Name}", scope, () => MadeFile.Of(file.Read())) { OwnKey = PlannedOutput.KeyOf(ProgramFingerprint.Value, [new PlanInput(file.Name, file.Hash)]) };
        }
    }

    /// <summary>One of the shop's pages.</summary>
    /// <param name="page">The page.</param>
    /// <param name="context">What it is composed from.</param>
    /// <param name="scope">Its own scope: to make one page after the other would leave all processors but one idle.</param>
    public IEnumerable<SiteFile> Shop(ShopPage page, Func<ShopContext> context, PageScope scope) =>
        SheetFiles.Of(page.Path, page.Tables, () => page.Compose(context()), engine, scope);

    /// <summary>The public pages.</summary>
    /// <param name="scope">What they may quote.</param>
    public IEnumerable<SiteFile> Reference(PageScope scope) => ReferenceFiles.Of(scope, (p, t, c) => Page(p, t, c, scope))
        .Append(Page(Addresses.Terms, TermsPage.Template, () => TermsPage.Compose(scope.Composition), scope));

    private SiteFile Page(string path, string template, Func<object> compose, PageScope scope) => new(path, scope, () => MadeFile.Of(engine.Render(template, compose())));
}
