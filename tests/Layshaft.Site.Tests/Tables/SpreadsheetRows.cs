using System.Text;
using CsvHelper;

namespace Layshaft.Site.Tests.Tables;

/// <summary>Reads a CSV file as another program would.</summary>
internal static class SpreadsheetRows
{
    public static IReadOnlyList<IReadOnlyList<string>> Of(string text)
    {
        using var csv = CsvReader.Create(new MemoryStream(Encoding.UTF8.GetBytes(text)), CsvReaderOptions.Default);
        var rows = new List<IReadOnlyList<string>>();
        csv.ReadHeader();
        rows.Add([.. csv.Headers.ToArray()]);
        while (csv.Read())
        {
            Assert.Equal(rows[0].Count, csv.FieldCount);
            rows.Add([.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]);
        }

        return rows;
    }
}
