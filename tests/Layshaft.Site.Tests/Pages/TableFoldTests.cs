using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Tests.Pages;

/// <summary>Which tables fold into blocks on a phone, and which are pushed sideways.</summary>
public sealed class TableFoldTests
{
    [Theory]
    [InlineData(4, 0, 3, false)]  // fits
    [InlineData(7, 2, 5, true)]   // words, few rows: read one row at a time
    [InlineData(7, 2, 30, false)] // words, many rows
    [InlineData(8, 5, 5, false)]  // figures, read down a column
    public void A_wide_table_folds_when_it_has_few_rows_of_words(int columns, int numbers, int rows, bool folds)
    {
        var table = TableView.Of("t", "A table", [.. Enumerable.Range(0, columns).Select(c => $"c{c}")], Enumerable.Range(0, rows).Select(_ => Row(columns, numbers)));
        Assert.Equal(folds, table.Folds);
    }

    [Fact]
    public void A_wide_table_with_a_sentence_folds_however_long_it_is()
    {
        var sentence = Cell.Of("A sentence that nobody should have to push into view with a thumb.");
        Assert.True(TableView.Of("t", "A table", ["a", "b", "c", "d", "e"], Enumerable.Range(0, 40).Select(_ => (IReadOnlyList<Cell>)[.. Row(4, 3), sentence])).Folds);
        Assert.False(TableView.Of("t", "A table", ["a", "b"], [[Cell.Of("x"), sentence]]).Folds);
    }

    private static IReadOnlyList<Cell> Row(int columns, int numbers) =>
        [.. Enumerable.Range(0, columns - numbers).Select(_ => Cell.Of("word")), .. Enumerable.Range(0, numbers).Select(Cell.Count)];
}
