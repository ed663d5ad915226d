using System.Globalization;
using System.Text;

namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>A small comma-separated table from the data folder; its README names each table's origin.</summary>
public sealed class PublishedTable
{
    private readonly string[] heads;

    private PublishedTable(string[] heads, IReadOnlyList<string[]> rows)
    {
        this.heads = heads;
        Rows = rows;
    }

    public IReadOnlyList<string[]> Rows { get; }

    /// <summary>Reads a table and refuses one that does not have the number of rows that the test was written for.</summary>
    public static PublishedTable Read(string name, int expectedRows)
    {
        var path = Path.Combine(AppContext.BaseDirectory, "PublishedSources", "data", name + ".csv");
        var lines = File.ReadAllLines(path).Where(line => line.Length > 0).Select(Split).ToArray();
        var table = new PublishedTable(lines[0], lines[1..]);
        Assert.Equal(expectedRows, table.Rows.Count);
        return table;
    }

    public string Text(string[] row, string head) => row[Array.IndexOf(heads, head)];

    public double Number(string[] row, string head) => ToNumber(Text(row, head));

    public double[] Column(string head) => [.. Rows.Select(row => Number(row, head))];

    /// <summary>A number as written, NaN for R's NA.</summary>
    public static double ToNumber(string text) =>
        text is "NA" or "NaN" ? double.NaN : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static string[] Split(string line)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        foreach (var character in line)
        {
            if (character == '"')
            {
                quoted = !quoted;
            }
            else if (character == ',' && !quoted)
            {
                cells.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(character);
            }
        }

        cells.Add(cell.ToString());
        return [.. cells];
    }
}
