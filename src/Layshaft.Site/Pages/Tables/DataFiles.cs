using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Tables;

/// <summary>Where the figures of a page lie for a program: beside it.</summary>
public static class DataFiles
{
    /// <summary>The JSON file of a page.</summary>
    public static string Json(string page)
    {
        ArgumentNullException.ThrowIfNull(page);
        return Path.ChangeExtension(page, ".json");
    }

    /// <summary>The CSV file of a table of a page.</summary>
    public static string Csv(string page, string table)
    {
        ArgumentNullException.ThrowIfNull(page);
        return $"{Path.ChangeExtension(page, null)}-{table}.csv";
    }

    /// <summary>The section that links to them.</summary>
    public static SectionView Section(string page, IReadOnlyList<TableView> tables, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(composition);
        return Section(page, tables.Where(t => t.Rows.Count > 0).Select(t => (t.Id, t.Caption)), composition);
    }

    /// <summary>The same for tables that are not written yet.</summary>
    internal static SectionView Section(string page, IEnumerable<TableDraft> tables, Composition composition) =>
        Section(page, tables.Where(t => t.Rows.Any()).Select(t => (t.Id, t.Caption)), composition);

    private static SectionView Section(string page, IEnumerable<(string Id, string Caption)> tables, Composition composition)
    {
        var links = tables
            .Select(t => new LinkView(Addresses.Link(page, Csv(page, t.Id)), composition.Say("life.data.csv", ("table", t.Caption))))
            .Append(new LinkView(Addresses.Link(page, Json(page)), composition.Say("life.data.json")));
        return BlocksView.Section(
            "data",
            composition.Say("life.data"),
            new Block { Lines = [composition.Say("life.data.words")], Links = [.. links], Fold = composition.Say("life.data.fold") })!;
    }
}
