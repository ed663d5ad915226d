namespace Layshaft.Site.Cards;

/// <summary>Breaks a sentence into lines of a width.</summary>
internal static class CardLines
{
    private const char More = '…';

    /// <summary>The lines; the last ends in an ellipsis when there is no room for the rest.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="width">The width of a line.</param>
    /// <param name="most">The most lines.</param>
    /// <param name="measure">How wide a text is.</param>
    public static IReadOnlyList<string> Break(string text, float width, int most, Func<string, float> measure)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in Words(text, width, measure))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (measure(longer) <= width)
            {
                line = longer;
                continue;
            }

            lines.Add(line);
            line = word;
            if (lines.Count == most)
            {
                lines[^1] = Shorten(lines[^1], width, measure);
                return lines;
            }
        }

        return line.Length > 0 ? [.. lines, line] : lines;
    }

    /// <summary>A text, cut and with an ellipsis when it is too wide.</summary>
    public static string Fit(string text, float width, Func<string, float> measure) => measure(text) <= width ? text : Shorten(text, width, measure);

    private static string Shorten(string line, float width, Func<string, float> measure)
    {
        while (line.Length > 0 && measure(line + More) > width)
        {
            line = line[..^(line.Length > 1 && char.IsLowSurrogate(line[^1]) ? 2 : 1)];
        }

        return line.TrimEnd() + More;
    }

    // A word that is wider than a line is cut to one.
    private static IEnumerable<string> Words(string text, float width, Func<string, float> measure) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(w => Fit(w, width, measure));
}
