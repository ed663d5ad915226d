using System.Text;
using CsvHelper;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Engineering.Traces;

namespace Layshaft.Site.Assessment.Traces;

/// <summary>Reads a trace row by row; memory does not grow with its rows.</summary>
public static class TraceFile
{
    private const int MostProblems = 10;
    private const int LongestRow = 1 << 16;

    /// <summary>Reads a trace into an analyser.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="file">Its name for problems.</param>
    /// <param name="columns">How it is laid out.</param>
    /// <param name="analyser">Receives the rows.</param>
    /// <param name="problems">Receives mistakes with row and column; the rows are left out.</param>
    /// <returns>Whether the header could be read and at least one row was used.</returns>
    public static bool Read(Stream stream, string file, TraceColumns columns, TraceAnalyser analyser, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(analyser);
        ArgumentNullException.ThrowIfNull(problems);
        using var buffered = new BufferedStream(stream, LongestRow);
        if (!SkipTo(columns.HeaderLine, buffered))
        {
            problems.Add("trace-file", new Place(file, 1, 1), $"The file has no line {columns.HeaderLine}, which should name its columns.", "Correct 'header_line' in the car's trace_columns.");
            return false;
        }

        var options = new CsvReaderOptions
        {
            Separator = columns.Separator,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false,
            MaxRecordSize = LongestRow,
        };
        using var csv = CsvReader.Create(buffered, options);
        var found = Columns(csv, file, columns, problems);
        return found is not null && Rows(csv, file, columns.HeaderLine - 1, found, analyser, problems);
    }

    // A line ends at a line feed; the reader takes the rest.
    private static bool SkipTo(int line, BufferedStream stream)
    {
        for (var at = 1; at < line;)
        {
            var next = stream.ReadByte();
            if (next < 0)
            {
                return false;
            }

            at += next == '\n' ? 1 : 0;
        }

        return true;
    }

    private static TraceChannels? Columns(CsvReader csv, string file, TraceColumns columns, ProblemList problems)
    {
        var channels = new TraceChannels(columns.DecimalComma);
        var isComplete = true;
        foreach (var (column, text) in channels.Named(columns))
        {
            if (text is not null && !column.Find(csv, text))
            {
                isComplete = false;
                string[] headers = [.. csv.Headers.Select(h => h.Trim()).Where(h => h.Length > 0)];
                var near = NearestWord.Of(text, headers) is { } word ? $"Did you mean '{word}'?" : $"The columns are: {Shortened(string.Join(", ", headers))}.";
                problems.Add("trace-column", new Place(file, columns.HeaderLine, 1), $"No column is named '{Shortened(text)}', which is the car's {column.Key} (units: {string.Join(", ", column.Units.Words)}).", near);
            }
        }

        return isComplete ? channels : null;
    }

    private static bool Rows(CsvReader csv, string file, int linesAbove, TraceChannels channels, TraceAnalyser analyser, ProblemList problems)
    {
        var wrong = 0;
        var isFirst = true;
        while (csv.Read())
        {
            if (isFirst && channels.Time.Read(csv) is null)
            {
                // The row below the header names the units.
                channels.TakeUnits(csv);
                isFirst = false;
                continue;
            }

            isFirst = false;
            if (channels.TryRead(csv, out var row) is not { } bad)
            {
                analyser.Add(row);
            }
            else if (++wrong <= MostProblems)
            {
                var text = Encoding.UTF8.GetString(csv.GetSpan(bad.Index));
                problems.Add(new Problem(
                    "trace-value",
                    new Place(file, (int)csv.LineNumber + linesAbove, ColumnOf(csv, bad.Index)),
                    $"The {bad.Key} '{Shortened(text)}' is not a number.",
                    text.Contains(',', StringComparison.Ordinal) ? "If numbers have a decimal comma, write 'decimal_comma: yes' in the car's trace_columns. The row is left out." : "The row is left out.",
                    Severity.LeftOut));
            }
        }

        if (wrong > MostProblems)
        {
            problems.Add(new Problem("trace-value", Place.WholeFile(file), $"{wrong - MostProblems} more rows have values that are not numbers.", "They are left out.", Severity.LeftOut));
        }

        if (analyser.RowsOutOfOrder > 0)
        {
            problems.Add(new Problem("trace-order", Place.WholeFile(file), $"In {analyser.RowsOutOfOrder} rows the time is earlier than in the row above.", "They are left out. Sort the file by time.", Severity.LeftOut));
        }

        if (analyser.Rows == 0)
        {
            problems.Add("trace-file", Place.WholeFile(file), "No row has time, speed and engine speed.", "Check the columns in the car's trace_columns.");
        }

        return analyser.Rows > 0;
    }

    private static int ColumnOf(CsvReader csv, int index)
    {
        var column = 1;
        for (var i = 0; i < index; i++)
        {
            column += Encoding.UTF8.GetCharCount(csv.GetRawSpan(i)) + 1;
        }

        return column;
    }

    private static string Shortened(string text) => text.Length > 200 ? text[..200] + "…" : text;
}
