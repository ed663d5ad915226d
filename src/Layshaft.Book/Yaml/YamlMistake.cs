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

        if (SecondColon(lines, line) is { } colon)
        {
            return new Problem(
                "colon-in-text",
                new Place(file, line, colon),
                "A colon followed by a space stands inside the text.",
                "Put the text in quotes: \"…: …\".");
        }

        return new Problem(
            "not-yaml",
            new Place(file, line, column),
            $"This can't be read: {Short(bad.Message.TrimEnd('.'))}.",
            "Check indentation, quotes and brackets on this line and the one above.");
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

    private static int? SecondColon(string[] lines, int line)
    {
        if (line > lines.Length)
        {
            return null;
        }

        var content = lines[line - 1];
        var first = content.IndexOf(": ", StringComparison.Ordinal);
        if (first < 0 || content.TrimEnd('\r')[(first + 2)..].TrimStart() is not [not ('"' or '\'' or '{' or '[' or '|' or '>'), ..])
        {
            return null;
        }

        var second = content.IndexOf(": ", first + 2, StringComparison.Ordinal);
        return second < 0 ? null : second + 1;
    }
}
