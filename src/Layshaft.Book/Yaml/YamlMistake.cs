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
        // The parser often names the start of the group around a tab, so every line is looked at when it complains of one.
        var (from, to) = bad.Message.Contains("tab", StringComparison.OrdinalIgnoreCase) ? (1, lines.Length) : (line - 1, line);
        if (TabOn(lines, from, to) is { } tab)
        {
            return new Problem("tab", new Place(file, tab.Line, tab.Column), "A tab is used to indent this line.", "Use spaces.");
        }

        if (QuoteMistake.Explain(file, lines, line, column, bad.Message) is { } quote)
        {
            return quote;
        }

        if (OpenBracket(file, lines, line - 1, line) is { } open)
        {
            return open;
        }

        if (TightDash(lines, line) is { } dash)
        {
            return new Problem("tight-dash", new Place(file, dash.Line, dash.Column), "A dash that begins an item needs a space after it.", "Write '- ' and then the item.");
        }

        if (SecondColon(lines, line) is { } colon)
        {
            return new Problem(
                "colon-in-text",
                new Place(file, line, colon),
                "A colon followed by a space stands inside the text.",
                "Put the text in quotes: \"…: …\".");
        }

        if (bad.Message.Contains("did not find expected '-'", StringComparison.Ordinal) || bad.Message.Contains("did not find expected key", StringComparison.Ordinal))
        {
            return new Problem("indent", new Place(file, line, column), "This line begins in another column than the lines that it belongs with.", "Begin it in the same column as the field before it.");
        }

        return new Problem(
            "not-yaml",
            new Place(file, line, column),
            $"This can't be read: {Short(bad.Message.TrimEnd('.'))}.",
            "Check indentation, quotes and brackets on this line and the one above.");
    }

    /// <summary>The same where the parser gave up without naming a place.</summary>
    public static Problem Explain(string file, string text)
    {
        var lines = text.Split('\n');
        return OpenBracket(file, lines, 1, lines.Length)
            ?? new Problem("not-yaml", Place.WholeFile(file), "This file can't be read as YAML.", "Check quotes, brackets and indentation in what was written last.");
    }

    private static string Short(string text) => text.Length > 200 ? text[..200] + "…" : text;

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
            for (var i = 1; i < content.Length && (quote is not null || content[i] != '#' || content[i - 1] != ' '); i++)
            {
                var (c, before) = (content[i], content[i - 1]);
                if (quote is not null)
                {
                    quote = c == quote ? null : quote;
                }
                else if (c is '"' or '\'' && before is ' ' or '[' or '{' or ',')
                {
                    quote = c;
                }
                else if (c is '[' or '{' && (open.Count > 0 || before == ' '))
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
        $"Close it with '{(open.Bracket == '[' ? ']' : '}')}'.");

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
        return second < 0 ? null : second + 1;
    }
}
