namespace Layshaft.Cli.Terminal;

/// <summary>Writes rows of cells in columns.</summary>
internal static class TextTable
{
    /// <summary>Writes the rows, each as long as the first.</summary>
    public static void Write(IReadOnlyList<string[]> rows, TextWriter output)
    {
        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(i => rows.Max(r => r[i].Length))];
        foreach (var row in rows)
        {
            output.WriteLine(string.Join("  ", row.Select((cell, i) => cell.PadRight(widths[i]))).TrimEnd());
        }
    }
}
