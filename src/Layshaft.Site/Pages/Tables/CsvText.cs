using System.Globalization;
using CsvHelper;

namespace Layshaft.Site.Pages.Tables;

/// <summary>Writes a table as CSV (RFC 4180): numbers bare, each with its unit in the next column.</summary>
public static class CsvText
{
    // With the mark, because a spreadsheet takes a file without it for another encoding than UTF-8; and words that begin
    // like a formula are made harmless.
    private static readonly CsvWriterOptions Options = CsvWriterOptions.Default with
    {
        WriteByteOrderMark = true,
        Injection = CsvInjection.Escape,
        FormatProvider = CultureInfo.InvariantCulture,
    };

    /// <summary>Writes the file.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="table">The table.</param>
    /// <param name="unitHead">Makes the head of a column of units from the head of the column before it.</param>
    public static void Write(Stream to, TableView table, Func<string, string> unitHead)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(unitHead);
        bool[] withUnit = [.. table.Columns.Select((_, i) => table.Rows.Any(r => r.Cells[i].Unit is not null))];
        using var csv = CsvWriter.Create(to, Options, true);
        for (var i = 0; i < table.Columns.Count; i++)
        {
            csv.WriteField(table.Columns[i].Name);
            if (withUnit[i])
            {
                csv.WriteField(unitHead(table.Columns[i].Name));
            }
        }

        csv.EndRecord();
        foreach (var row in table.Rows)
        {
            Write(csv, row, withUnit);
        }
    }

    private static void Write(CsvWriter csv, Row row, bool[] withUnit)
    {
        for (var i = 0; i < row.Cells.Count; i++)
        {
            var cell = row.Cells[i];
            if (cell.Number is { } number)
            {
                csv.WriteField(number, default);
            }
            else
            {
                csv.WriteField(cell.Data);
            }

            if (withUnit[i])
            {
                csv.WriteField(cell.Unit);
            }
        }

        csv.EndRecord();
    }
}
