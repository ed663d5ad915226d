using Layshaft.Book.Yaml;

namespace Layshaft.Cli.Entering;

/// <summary>Where a value of a YAML file begins and ends in its text.</summary>
/// <param name="Start">Index of its first character.</param>
/// <param name="End">Index behind its last character; the same as the start if nothing is written.</param>
internal readonly record struct ValueSpan(int Start, int End)
{
    /// <summary>The span of an entry's value; null if it is written in a form that cannot be replaced without touching comments, such as a list on several lines.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="entry">The entry.</param>
    public static ValueSpan? Of(string text, MapEntry entry)
    {
        var start = IndexOf(text, entry.Value.Line, entry.Value.Column);
        return entry.Value switch
        {
            ScalarNode { IsNothing: true, Text: "" } => Nothing(text, entry),
            ScalarNode { Plain: true } plain when string.CompareOrdinal(text, start, plain.Text, 0, plain.Text.Length) == 0 => new ValueSpan(start, start + plain.Text.Length),
            ListNode or MapNode when start < text.Length && text[start] is '[' or '{' => Bracketed(text, start),
            _ => null,
        };
    }

    /// <summary>The index of a place in a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="line">Counted from 1.</param>
    /// <param name="column">Counted from 1.</param>
    public static int IndexOf(string text, int line, int column)
    {
        var at = 0;
        for (var i = 1; i < line; i++)
        {
            at = text.IndexOf('\n', at) + 1;
        }

        return at + column - 1;
    }

    private static ValueSpan Nothing(string text, MapEntry entry)
    {
        var colon = text.IndexOf(':', IndexOf(text, entry.KeyLine, entry.KeyColumn) + entry.Key.Length);
        var end = colon + 1;
        while (end < text.Length && text[end] == ' ')
        {
            end++;
        }

        return new ValueSpan(colon + 1, end < text.Length && text[end] is ',' or '}' ? end : colon + 1);
    }

    private static ValueSpan? Bracketed(string text, int start)
    {
        var depth = 0;
        for (var i = start; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '[' or '{':
                    depth++;
                    break;
                case ']' or '}' when --depth == 0:
                    return new ValueSpan(start, i + 1);
                case '"' or '\'' or '#':
                    return null;
            }
        }

        return null;
    }
}
