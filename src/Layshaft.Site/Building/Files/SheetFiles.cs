using Layshaft.Site.Pages.Tables;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>The files of a page with tables: the page, its figures as JSON, each table as CSV. Composed once for all of them.</summary>
internal static class SheetFiles
{
    /// <summary>The page and the files beside it.</summary>
    public static IEnumerable<SiteFile> Of(string path, IReadOnlyList<string> tables, Func<SheetPage> compose, TemplateEngine engine, PageScope scope)
    {
        var composed = () => scope.Once(path, compose);
        var page = new SiteFile(path, scope, () => MadeFile.Of(engine.Render(SheetPage.Template, composed())));
        return [page, .. Beside(path, () => composed().Head.Title, tables, () => composed().Tables, scope)];
    }

    /// <summary>The files beside a page alone.</summary>
    /// <param name="path">The page.</param>
    /// <param name="title">Its title.</param>
    /// <param name="names">The short names of its tables: they name the files, before anything is composed.</param>
    /// <param name="compose">Composes the tables.</param>
    /// <param name="scope">What they may quote.</param>
    public static IEnumerable<SiteFile> Beside(string path, Func<string> title, IReadOnlyList<string> names, Func<IReadOnlyList<TableView>> compose, PageScope scope)
    {
        var json = DataFiles.Json(path);
        var tables = () => scope.Once(json, compose);
        yield return new SiteFile(json, scope, () => MadeFile.Of(stream => JsonText.Write(stream, title(), path[(path.LastIndexOf('/') + 1)..], tables())));
        foreach (var name in names)
        {
            yield return new SiteFile(
                DataFiles.Csv(path, name),
                scope,
                () => MadeFile.Of(stream => CsvText.Write(stream, tables().Single(t => t.Id == name), head => scope.Composition.Say("life.data.unit", ("column", head)))));
        }
    }
}
