namespace Layshaft.Site.Pages.Tables;

/// <summary>The tables of a page.</summary>
internal static class TableList
{
    /// <summary>The table with a short name.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="id">Its short name.</param>
    /// <exception cref="InvalidOperationException">There is none of that name.</exception>
    public static TableView Named(this IReadOnlyList<TableView> tables, string id) => tables.Single(t => t.Id == id);
}
