namespace Layshaft.Site.Pages.Tables;

/// <summary>A table before its rows are written: a page that only leads to it need not write them all.</summary>
/// <param name="Id">Short name, unique on its page.</param>
/// <param name="Caption">What it holds.</param>
/// <param name="Heads">The heads of its columns.</param>
/// <param name="Rows">The rows, each written when it is asked for.</param>
internal sealed record TableDraft(string Id, string Caption, IReadOnlyList<string> Heads, IEnumerable<IReadOnlyList<Cell>> Rows)
{
    /// <summary>The table.</summary>
    public TableView Make() => TableView.Of(Id, Caption, Heads, Rows);
}
