using System.Globalization;
using System.Text;

namespace Layshaft.Book.Yaml;

/// <summary>Characters that look like a plain one, or like nothing: telephones, word processors and web pages put them in.</summary>
/// <param name="Index">Where the first one is, counted from 0.</param>
/// <param name="Found">The character.</param>
internal readonly record struct LookAlike(int Index, char Found)
{
    private const string DoubleQuotes = "\u201C\u201D\u201E\u201F\u00AB\u00BB\uFF02";
    private const string SingleQuotes = "\u2018\u2019\u201A\u201B\u2039\u203A\uFF07\u00B4";
    private const string Hyphens = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\uFF0D";
    private const string Degrees = "\u00BA\u02DA\u2218\u1D52";
    private const string Invisible = "\u00AD\u180E\u200B\u200C\u200D\u2060";

    /// <summary>What is wrong, as a sentence.</summary>
    public string Message => string.Create(CultureInfo.InvariantCulture, $"There is {Name} here (U+{(int)Found:X4}).");

    /// <summary>What to type, as a sentence.</summary>
    public string Remedy => Plain(Found) is { } plain
        ? plain == ' ' ? "Delete it and type a plain space." : $"Type {plain} instead."
        : "Delete it.";

    private string Name => Plain(Found) switch
    {
        null => "an invisible character",
        ' ' => Found == '\u00A0' ? "a no-break space" : "a space of unusual width",
        '"' or '\'' => $"a typographic quote mark ({Found})",
        '°' => $"a look-alike of the degree sign ({Found})",
        '-' => $"a dash ({Found}) in place of a hyphen",
        _ => $"a full-width character ({Found})",
    };

    /// <summary>The first such character of a text; null where it has none.</summary>
    public static LookAlike? In(ReadOnlySpan<char> text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] > '~' && Plain(text[i]) != text[i])
            {
                return new LookAlike(i, text[i]);
            }
        }

        return null;
    }

    /// <summary>A text with each such character as the plain one.</summary>
    public static string Replace(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if ((c > '~' ? Plain(c) : c) is { } kept)
            {
                plain.Append(kept);
            }
        }

        return plain.ToString();
    }

    // The plain character for one; the same for one that is no look-alike, null for an invisible one.
    private static char? Plain(char c) =>
        Invisible.Contains(c, StringComparison.Ordinal) ? null
        : c is '\u00A0' or '\u1680' or (>= '\u2000' and <= '\u200A') or '\u202F' or '\u205F' or '\u3000' ? ' '
        : DoubleQuotes.Contains(c, StringComparison.Ordinal) ? '"'
        : SingleQuotes.Contains(c, StringComparison.Ordinal) ? '\''
        : Degrees.Contains(c, StringComparison.Ordinal) ? '°'
        : Hyphens.Contains(c, StringComparison.Ordinal) ? '-'
        : c is >= '\uFF01' and <= '\uFF5E' ? (char)(c - '\uFF01' + '!')
        : c;
}
