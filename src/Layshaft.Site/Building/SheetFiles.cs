using System.Text;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Tables;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>The files of a page with tables: the page, its figures as JSON, each table as CSV. Composed once for all of them.</summary>
internal static class SheetFiles
{
    /// <summary>The page and the files beside it.</summary>
    public static IEnumerable<SiteFile> Of(string path, IReadOnlyList<string> tables, Func<SheetPage> compose, TemplateEngine engine, Composition composition)
    {
        var composed = new Lazy<SheetPage>(compose);
        var page = new SiteFile(path, () =>
        {
            var rendered = engine.Render(SheetPage.Template, composed.Value);
            return new MadeFile(rendered.Html is { } html ? Encoding.UTF8.GetBytes(html) : null, rendered.Problems);
        });
        return [page, .. Beside(path, () => composed.Value.Head.Title, tables, () => composed.Value.Tables, composition)];
    }

    /// <summary>The files beside a page alone.</summary>
    /// <param name="path">The page.</param>
    /// <param name="title">Its title.</param>
    /// <param name="names">The short names of its tables: they name the files, before anything is composed.</param>
    /// <param name="compose">Composes the tables.</param>
    /// <param name="composition">What pages are composed from.</param>
    public static IEnumerable<SiteFile> Beside(string path, Func<string> title, IReadOnlyList<string> names, Func<IReadOnlyList<TableView>> compose, Composition composition)
    {
        var tables = new Lazy<IReadOnlyList<TableView>>(compose);
        yield return new SiteFile(DataFiles.Json(path), () => MadeFile.Of(JsonText.Of(title(), path[(path.LastIndexOf('/') + 1)..], tables.Value)));
        foreach (var name in names)
        {
            yield return new SiteFile(
                DataFiles.Csv(path, name),
                () => MadeFile.Of(CsvText.Of(tables.Value.Single(t => t.Id == name), head => composition.Say("life.data.unit", ("column", head)))));
        }
    }
}
