using System.Text.RegularExpressions;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Yaml;

/// <summary>Finds the cause of a line that can't be read in the line itself and the one above.</summary>
internal static partial class LineMistake
{
    // In the indent, as a dash, or after one: where a plain character has a meaning.
    private const string Blanks = @"\u00A0\u2000-\u200D\u202F\u3000\u2060";

    /// <summary>What a version control program leaves in a file that two people changed in the same lines.</summary>
    public static Problem? MergeMark(string file, string[] lines)
    {
        var at = Array.FindIndex(lines, l => l.StartsWith("<<<<<<<", StringComparison.Ordinal) || l.StartsWith(">>>>>>>", StringComparison.Ordinal) || l.TrimEnd() == "=======");
        return at < 0 ? null : new Problem(
            "merge-conflict",
            new Place(file, at + 1, 1),
            $"Two versions of this file were merged, and both are still in it ('{lines[at][..7]}').",
            "Keep one version, and delete the lines with <<<<<<<, ======= and >>>>>>>.");
    }

    /// <summary>Look-alikes where a plain character would have a meaning.</summary>
    public static Problem? LookAlikeOn(string file, string[] lines, int line)
    {
        for (var n = Math.Max(1, line - 1); n <= Math.Min(line, lines.Length); n++)
        {
            var found = Structure().Match(lines[n - 1]);
            found = found.Success || n < line ? found : Quote().Match(lines[n - 1]);
            if (found.Success && LookAlike.In(found.Value) is { } alike)
            {
                return new Problem("look-alike", new Place(file, n, found.Index + alike.Index + 1), alike.Message, alike.Remedy);
            }
        }

        return null;
    }

    /// <summary>A field whose colon is another character, or has no space behind it.</summary>
    public static Problem? FieldOn(string file, string[] lines, int line)
    {
        for (var n = Math.Max(1, line - 1); n <= Math.Min(line, lines.Length); n++)
        {
            var start = Indent(lines[n - 1]);
            start += lines[n - 1].AsSpan(start).StartsWith("- ") ? 2 : 0;
            if (FieldSlip.Explain(lines[n - 1][start..], new Place(file, n, start + 1)) is { } slip)
            {
                return slip;
            }
        }

        return null;
    }

    /// <summary>A character with a meaning of its own where a value begins, a line indented too far, a comment in a text, a line without a colon.</summary>
    public static Problem? Stray(string file, string[] lines, int line, int column)
    {
        var content = Line(lines, line);
        var place = new Place(file, line, column);
        var start = Indent(content);
        var isField = content.Contains(": ", StringComparison.Ordinal) || content.EndsWith(':');
        var above = Line(lines, line - 1);
        if (isField && column > start && Indent(above) < start && above.Contains(": ", StringComparison.Ordinal))
        {
            return new Problem("indent", new Place(file, line, start + 1), "This line is indented further than the field above it, which already has a value.", "Begin it in the same column as the field above.");
        }

        switch (column <= content.Length ? content[column - 1] : ' ')
        {
            case '@' or '`' or '%' or '|' or '>' or '&' or '*' or '!':
                return new Problem("sign-at-start", place, $"A text cannot begin with '{content[column - 1]}'.", "Put the text in quotes: \"…\".");
            case ']' or '}':
                return new Problem("stray-bracket", place, $"This '{content[column - 1]}' closes a bracket that is not open.", "Delete it, or add the opening bracket.");
            case ',':
                return new Problem("stray-comma", place, "There is nothing before this comma.", "Delete the comma, or write what is missing.");
            case ':':
                return Colon(file, content, Line(lines, line - 1), place);
            case '-' when column > start + 1:
                return new Problem("list-on-line", place, "A dash begins an item, and each item needs its own line.", "Begin a new line with '- ', or put the text in quotes.");
        }

        if (TightBracket().Match(content) is { Success: true } tight)
        {
            return new Problem("tight-colon", new Place(file, line, tight.Groups["colon"].Index + 1), $"The colon after '{tight.Groups["name"].Value}' has no space after it.", $"Write '{tight.Groups["name"].Value}: {content[tight.Index + tight.Length]}'.");
        }

        if (!isField && above.IndexOf(" #", StringComparison.Ordinal) is > 0 and var hash)
        {
            return new Problem("hash-in-text", new Place(file, line - 1, hash + 2), "This '#' begins a comment, so the text ends there, but the next line continues it.", "Put the whole text in quotes: \"…\".");
        }

        if (BeforeDash().Match(content) is { Success: true } before)
        {
            return new Problem("before-dash", new Place(file, line, before.Groups["sign"].Index + 1), $"There is '{before.Groups["sign"].Value}' before the dash of this item.", "Delete it.");
        }

        return !isField && column == start + 1 && start < content.Length && char.IsLetter(content[start])
            ? NoColon(place)
            : isField && IsLoose(above) ? NoColon(new Place(file, line - 1, Indent(above) + 1)) : null;
    }

    // A colon that the parser did not expect: in braces after a missing comma, or in a text.
    private static Problem Colon(string file, string content, string above, Place place)
    {
        var name = Name().Match(content[..(place.Column - 1)]);
        return name.Success && content[..name.Index].Contains('{', StringComparison.Ordinal)
            ? new Problem("missing-comma", place with { Column = name.Groups["name"].Index + 1 }, $"There is no comma before '{name.Groups["name"].Value}'.", $"Write ', {name.Groups["name"].Value}: …'.")
            : place.Column == content.Length && IsLoose(above) ? NoColon(new Place(file, place.Line - 1, Indent(above) + 1))
            : new Problem("colon-in-text", place, "This colon is inside a text.", "Put the text in quotes (\"…\"), or delete the colon.");
    }

    private static Problem NoColon(Place place) =>
        new("no-colon", place, "This line has no colon, so it is not a field.", "Write 'field: value', or indent the line if it continues the text above.");

    private static bool IsLoose(string line) => line.TrimStart() is [not '#', ..] && !line.Contains(':', StringComparison.Ordinal);

    private static string Line(string[] lines, int line) => line >= 1 && line <= lines.Length ? lines[line - 1].TrimEnd('\r') : string.Empty;

    private static int Indent(string line) => line.Length - line.TrimStart(' ').Length;

    [GeneratedRegex($@"^[ \t]*(?:[{Blanks}\u2010-\u2015]+|-[{Blanks}]+)", RegexOptions.CultureInvariant)]
    private static partial Regex Structure();

    [GeneratedRegex(@"(?<name>[A-Za-z_]+) ?(?<colon>:)(?=[\[{])", RegexOptions.CultureInvariant)]
    private static partial Regex TightBracket();

    [GeneratedRegex(@"^ *(?<sign>[^ \-#]{1,2}) *- ", RegexOptions.CultureInvariant)]
    private static partial Regex BeforeDash();

    [GeneratedRegex("[^ ,{\\[:] +(?<name>[A-Za-z_]+) *$", RegexOptions.CultureInvariant)]
    private static partial Regex Name();

    [GeneratedRegex(@"^[ \t]*(?:- )?[A-Za-z_]+:[ ]+[\u2018-\u201F\u00AB\u00BB\u2039\u203A\uFF02\uFF07]", RegexOptions.CultureInvariant)]
    private static partial Regex Quote();
}
