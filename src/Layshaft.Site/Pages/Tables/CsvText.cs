using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Layshaft.Site.Pages.Tables;

/// <summary>Writes a table as CSV (RFC 4180): numbers bare, each with its unit in the next column.</summary>
public static class CsvText
{
    private static readonly char[] Formulas = ['=', '+', '-', '@', '\t', '\r'];

    /// <summary>The table's text.</summary>
    /// <param name="table">The table.</param>
    /// <param name="unitHead">Makes the head of a column of units from the head of the column before it.</param>
    public static string Of(TableView table, Func<string, string> unitHead)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(unitHead);
        bool[] withUnit = [.. table.Columns.Select((_, i) => table.Rows.Any(r => r.Cells[i].Unit is not null))];
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }))
        {
            for (var i = 0; i < table.Columns.Count; i++)
            {
                csv.WriteField(table.Columns[i].Name);
                if (withUnit[i])
                {
                    csv.WriteField(unitHead(table.Columns[i].Name));
                }
            }

            csv.NextRecord();
            foreach (var row in table.Rows)
            {
                for (var i = 0; i < row.Cells.Count; i++)
                {
                    var cell = row.Cells[i];
                    csv.WriteField(cell.IsNumber ? cell.Data : Harmless(cell.Data));
                    if (withUnit[i])
                    {
                        csv.WriteField(cell.Unit);
                    }
                }

                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    // A spreadsheet takes words that begin like this for a formula.
    private static string? Harmless(string? words) => words is { Length: > 0 } && Formulas.Contains(words[0]) ? "'" + words : words;
}
