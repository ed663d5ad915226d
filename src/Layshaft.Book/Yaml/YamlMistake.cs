using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using YamlDotNet.Core;

namespace Layshaft.Book.Yaml;

/// <summary>Says in the bench's words what the YAML parser could not read.</summary>
internal static class YamlMistake
{
    public static Problem Explain(string file, string text, YamlException bad)
    {
        var line = (int)Math.Clamp(bad.Start.Line, 1, int.MaxValue);
        var column = (int)Math.Clamp(bad.Start.Column, 1, int.MaxValue);
        var lines = text.Split('\n');
        if (LineMistake.MergeMark(file, lines) is { } merge)
        {
            return merge;
        }

        // The parser often names the start of the group around a tab, so every line is looked at when it complains of one.
        var (from, to) = bad.Message.Contains("tab", StringComparison.OrdinalIgnoreCase) ? (1, lines.Length) : (line - 1, line);
        if (TabOn(lines, from, to) is { } tab)
        {
            return new Problem("tab", new Place(file, tab.Line, tab.Column), "This line is indented with a tab.", "Use spaces.");
        }

        if (LineMistake.LookAlikeOn(file, lines, line) is { } alike)
        {
            return alike;
        }

        if (QuoteMistake.Explain(file, lines, line, column, bad.Message) is { } quote)
        {
            return quote;
        }

        if (LineMistake.FieldOn(file, lines, line) is { } slip)
        {
            return slip;
        }

        if (OpenBracket(file, lines, line - 1, line) is { } open)
        {
            return open;
        }

        if (TightDash(lines, line) is { } dash)
        {
            return new Problem("tight-dash", new Place(file, dash.Line, dash.Column), "A dash that begins an item needs a space after it.", "Write '- ' before the item.");
        }

        if (SecondColon(lines, line) is { } colon)
        {
            return new Problem(
                "colon-in-text",
                new Place(file, line, colon),
                "The text contains a colon followed by a space.",
                "Put the text in quotes: \"…: …\".");
        }

        return LineMistake.Stray(file, lines, line, column)
            ?? (bad.Message.Contains("did not find expected '-'", StringComparison.Ordinal) || bad.Message.Contains("did not find expected key", StringComparison.Ordinal)
                ? new Problem("indent", new Place(file, line, column), "This line is not indented like the lines it belongs to.", "Begin it in the same column as the field before it.")
                : new Problem("not-yaml", new Place(file, line, column), "This line cannot be read.", "Check the indentation, quotes, brackets and colons of this line and the one above."));
    }

    /// <summary>The same where the parser gave up without naming a place.</summary>
    /// <param name="file">The file.</param>
    /// <param name="text">What is in it.</param>
    /// <param name="line">The line that was read last.</param>
    public static Problem Explain(string file, string text, int line)
    {
        var lines = text.Split('\n');
        return LineMistake.MergeMark(file, lines)
            ?? LineMistake.LookAlikeOn(file, lines, line)
            ?? OpenBracket(file, lines, 1, lines.Length)
            ?? QuoteMistake.Explain(file, lines, line, 1, string.Empty)
            ?? LineMistake.FieldOn(file, lines, line + 1)
            ?? (line > 0 ? new Problem("not-yaml", new Place(file, line, 1), "This line or the next cannot be read.", "Check the indentation, quotes, brackets and colons of both.") : null)
            ?? new Problem("not-yaml", Place.WholeFile(file), "This file cannot be read as YAML.", "Check quotes, brackets and indentation in the lines you changed last.");
    }

    private static (int Line, int Column)? TabOn(string[] lines, int from, int to)
    {
        for (var n = Math.Max(1, from); n <= Math.Min(to, lines.Length); n++)
        {
            var content = lines[n - 1];
            var indent = content.Length - content.TrimStart(' ', '\t').Length;
            var tab = content.IndexOf('\t', StringComparison.Ordinal);
            if (tab >= 0 && tab < indent)
            {
                return (n, tab + 1);
            }
        }

        return null;
    }

    // A list or group on one line, as "readings: [0.78 mm, 0.76 mm". Text in quotes and remarks do not count.
    private static Problem? OpenBracket(string file, string[] lines, int from, int to)
    {
        Stack<(int Line, int Column, char Bracket)> open = [];
        for (var n = Math.Max(1, from); n <= Math.Min(to, lines.Length); n++)
        {
            var content = lines[n - 1];
            char? quote = null;
            for (var i = 1; i < content.Length; i++)
            {
                if (quote is null && content[i] == '#' && content[i - 1] == ' ')
                {
                    if (open.TryPeek(out var before) && content.IndexOf(before.Bracket == '[' ? ']' : '}', i) >= 0)
                    {
                        return new Problem("hash-in-text", new Place(file, n, i + 1), $"This '#' begins a comment, and the bracket that closes the '{before.Bracket}' is in it.", "Put the text in quotes: \"…\".");
                    }

                    break;
                }

                var (c, left) = (content[i], content[i - 1]);
                if (quote is not null)
                {
                    quote = c == quote ? null : quote;
                }
                else if (c is '"' or '\'' && left is ' ' or '[' or '{' or ',')
                {
                    quote = c;
                }
                else if (c is '[' or '{' && (open.Count > 0 || left == ' '))
                {
                    open.Push((n, i + 1, c));
                }
                else if (c is ']' or '}' && open.TryPop(out var opened) && opened.Bracket != (c == ']' ? '[' : '{'))
                {
                    return NotClosed(file, opened);
                }
            }
        }

        return open.TryPop(out var last) ? NotClosed(file, last) : null;
    }

    private static Problem NotClosed(string file, (int Line, int Column, char Bracket) open) => new(
        "open-bracket",
        new Place(file, open.Line, open.Column),
        $"This '{open.Bracket}' is not closed.",
        $"Add '{(open.Bracket == '[' ? ']' : '}')}'.");

    private static (int Line, int Column)? TightDash(string[] lines, int line)
    {
        for (var n = Math.Max(1, line - 1); n <= Math.Min(line, lines.Length); n++)
        {
            var content = lines[n - 1];
            var item = content.TrimStart(' ');
            if (item is ['-', not (' ' or '-' or '\r' or (>= '0' and <= '9')), ..] && item.Contains(':', StringComparison.Ordinal))
            {
                return (n, content.Length - item.Length + 1);
            }
        }

        return null;
    }

    private static int? SecondColon(string[] lines, int line)
    {
        if (line > lines.Length)
        {
            return null;
        }

        var content = lines[line - 1];
        var first = content.IndexOf(": ", StringComparison.Ordinal);
        if (first < 0 || content.AsSpan(0, first).Contains('{') || content.TrimEnd('\r')[(first + 2)..].TrimStart() is not [not ('"' or '\'' or '{' or '[' or '|' or '>'), ..])
        {
            return null;
        }

        var second = content.IndexOf(": ", first + 2, StringComparison.Ordinal);
        var end = content.TrimEnd('\r').Length;
        return second >= 0 ? second + 1 : content[end - 1] == ':' ? end : null;
    }
}
