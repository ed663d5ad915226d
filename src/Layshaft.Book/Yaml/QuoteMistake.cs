using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Yaml;

/// <summary>Explains a mistake in quotes, for which the parser names the text after it, if anything.</summary>
internal static class QuoteMistake
{
    /// <summary>Explains a mistake of quotes, if it is one.</summary>
    /// <param name="file">The file.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="line">The line that the parser names, counted from 1.</param>
    /// <param name="column">The column that it names.</param>
    /// <param name="message">What it says.</param>
    public static Problem? Explain(string file, string[] lines, int line, int column, string message)
    {
        if (message.Contains("unknown escape", StringComparison.Ordinal))
        {
            return new Problem("backslash", new Place(file, line, BackslashAfter(lines, line, column)), "In double quotes, a backslash begins an escape sequence.", "Write the backslash twice, or put the text in single quotes: '…'.");
        }

        if (message.Contains("quoted scalar", StringComparison.Ordinal) && QuoteAt(lines, line, column) is { } open)
        {
            return new Problem("open-quote", new Place(file, line, column), $"This {open} is not closed.", $"Add {open} at the end of the text.");
        }

        for (var n = Math.Max(1, line - 1); n <= Math.Min(line, lines.Length); n++)
        {
            if (EndBeforeText(lines[n - 1]) is { } end)
            {
                return new Problem(
                    "quote-in-text",
                    new Place(file, n, end.Column),
                    $"The quoted text ends at this {end.Quote}, but more text follows.",
                    end.Quote == '"' ? "Put the whole text in single quotes: '… \"…\" …'." : "Put the whole text in double quotes: \"… '…\".");
            }
        }

        return null;
    }

    // YAML 1.2.2, 5.7: what may follow a backslash.
    private static int BackslashAfter(string[] lines, int line, int column)
    {
        var content = line <= lines.Length ? lines[line - 1] : string.Empty;
        for (var i = Math.Min(column, content.Length) - 1; i >= 0 && i + 1 < content.Length; i++)
        {
            if (content[i] == '\\' && !"0abt\tnvfre \"/\\N_LPxuU".Contains(content[++i], StringComparison.Ordinal))
            {
                return i;
            }
        }

        return column;
    }

    private static char? QuoteAt(string[] lines, int line, int column) =>
        line <= lines.Length && column <= lines[line - 1].Length && lines[line - 1][column - 1] is '"' or '\'' ? lines[line - 1][column - 1] : null;

    // Where the quotes of a value or an item end, if anything but a comment follows.
    private static (char Quote, int Column)? EndBeforeText(string line)
    {
        var content = line.TrimEnd('\r', ' ');
        var colon = content.IndexOf(": ", StringComparison.Ordinal);
        var start = content.Length - content.TrimStart(' ', '-').Length;
        foreach (var at in new[] { start, colon < 0 ? start : colon + 2 })
        {
            if (at < content.Length && content[at] is '"' or '\'' && End(content, at) is { } end
                && content[(end + 1)..] is { Length: > 0 } rest && rest.TrimStart() is not ['#' or ':' or ',' or '}' or ']', ..])
            {
                return (content[at], end + 1);
            }
        }

        return null;
    }

    private static int? End(string content, int start)
    {
        for (var i = start + 1; i < content.Length; i++)
        {
            if (content[start] == '"' && content[i] == '\\')
            {
                i++;
            }
            else if (content[i] == content[start] && (content[start] == '"' || i + 1 == content.Length || content[i + 1] != '\''))
            {
                return i;
            }
            else if (content[i] == content[start])
            {
                i++;
            }
        }

        return null;
    }
}
