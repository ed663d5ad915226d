namespace Layshaft.Site.Pages.Tables;

/// <summary>A table: shown on a page, and written beside it as CSV and JSON.</summary>
/// <param name="Id">Short name, unique on its page: part of a file's name.</param>
/// <param name="Caption">What it holds.</param>
/// <param name="Columns">The heads of its columns; the first names the row.</param>
/// <param name="Rows">The rows, each with as many cells as there are columns.</param>
public sealed record TableView(string Id, string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows)
{
    // From so many columns on a phone's width would squeeze words into one syllable a line.
    private const int Many = 5;

    /// <summary>Whether it is too wide for a phone, where it keeps its width and is moved sideways.</summary>
    public bool IsWide => Columns.Count >= Many;

    // More rows than these would fold into screens and screens of blocks.
    private const int Few = 12;

    /// <summary>
    /// Whether each of its rows folds into a block on a phone: wide, with sentences that nobody should have to push into view,
    /// or with few rows of words rather than figures, which are read one row at a time and not down a column.
    /// </summary>
    public bool Folds => IsWide && (Rows.Any(r => r.Cells.Any(c => c.IsLong)) || (Rows.Count <= Few && Columns.Count(c => c.IsNumber) * 2 <= Columns.Count + 1));

    /// <summary>The table with no more than its first rows.</summary>
    /// <param name="most">How many at most.</param>
    public TableView First(int most) => Rows.Count <= most ? this : this with { Rows = [.. Rows.Take(most)] };

    /// <summary>The table with some of its columns: the others are in its files.</summary>
    /// <param name="columns">Their places, counted from 0.</param>
    public TableView Only(params int[] columns) => this with
    {
        Columns = [.. columns.Select(c => Columns[c])],
        Rows = [.. Rows.Select(r => new Row([.. columns.Select(c => r.Cells[c])]))],
    };

    /// <summary>The table with no more than its last rows.</summary>
    /// <param name="most">How many at most.</param>
    public TableView Last(int most) => Rows.Count <= most ? this : this with { Rows = [.. Rows.TakeLast(most)] };

    /// <summary>Makes a table; a column is set to the right when all its filled cells are numbers.</summary>
    public static TableView Of(string id, string caption, IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<Cell>> rows)
    {
        ArgumentNullException.ThrowIfNull(heads);
        Row[] all = [.. rows.Select(r => new Row(r))];
        if (all.Any(r => r.Cells.Count != heads.Count))
        {
            throw new ArgumentException("Each row needs a cell for each column.", nameof(rows));
        }

        return new TableView(
            id,
            caption,
            [.. heads.Select((h, i) => new Column(h, all.Any(r => r.Cells[i].Data is not null) && all.All(r => r.Cells[i] is { IsNumber: true } or { Data: null })))],
            all);
    }
}

/// <summary>The head of a column.</summary>
/// <param name="Name">What it holds.</param>
/// <param name="IsNumber">Whether it is set to the right.</param>
public sealed record Column(string Name, bool IsNumber);

/// <summary>A row.</summary>
/// <param name="Cells">Its cells.</param>
public sealed record Row(IReadOnlyList<Cell> Cells);
