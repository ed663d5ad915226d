using System.Text.Encodings.Web;
using System.Text.Json;

namespace Layshaft.Site.Pages.Tables;

/// <summary>Writes a page's tables as JSON: each number with its unit.</summary>
public static class JsonText
{
    private const int Most = 1 << 16;

    /// <summary>Writes the text: title, address of the page, and its tables. A table of the shop may have very many rows, so none of it is held.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="title">Title of the page.</param>
    /// <param name="page">File name of the page beside which it lies.</param>
    /// <param name="tables">The tables.</param>
    public static void Write(Stream to, string title, string page, IReadOnlyList<TableView> tables)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(tables);
        using (var json = new Utf8JsonWriter(to, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Default }))
        {
            json.WriteStartObject();
            json.WriteString("title", title);
            json.WriteString("page", page);
            json.WriteStartArray("tables");
            foreach (var table in tables)
            {
                Write(json, table);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        to.Write("\n"u8);
    }

    // The unit of counts and ratios (ISO 80000-1: the unit one), so that no number stands without a unit.
    private const string One = "1";

    private static void Write(Utf8JsonWriter json, TableView table)
    {
        json.WriteStartObject();
        json.WriteString("id", table.Id);
        json.WriteString("caption", table.Caption);
        json.WriteStartArray("columns");
        foreach (var column in table.Columns)
        {
            json.WriteStringValue(column.Name);
        }

        json.WriteEndArray();
        json.WriteStartArray("rows");
        foreach (var row in table.Rows)
        {
            json.WriteStartArray();
            foreach (var cell in row.Cells)
            {
                Write(json, cell);
            }

            json.WriteEndArray();
            if (json.BytesPending > Most)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Cell cell)
    {
        if (cell.Number is { } number)
        {
            json.WriteStartObject();
            json.WriteNumber("value", number);
            json.WriteString("unit", cell.Unit ?? One);
            json.WriteEndObject();
        }
        else
        {
            json.WriteStringValue(cell.Data);
        }
    }
}
