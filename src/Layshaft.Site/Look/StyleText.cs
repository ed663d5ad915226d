using System.Text;

namespace Layshaft.Site.Look;

/// <summary>
/// Writes a stylesheet small: without comments, needless blanks and line ends, its addresses as seen from the page that it will
/// stand in. Strings stay as they are. What a sheet leaves open is closed, so that it cannot spoil the one that follows.
/// </summary>
internal sealed class StyleText
{
    private const string Tight = "{};,>";
    private readonly string css;
    private readonly Func<string, string> addressOf;
    private readonly StringBuilder small;
    private int at;
    private int open;
    private int escaped = -1;

    private StyleText(string css, Func<string, string> addressOf) => (this.css, this.addressOf, small) = (css, addressOf, new StringBuilder(css.Length));

    /// <summary>The sheet, small.</summary>
    /// <param name="css">A stylesheet.</param>
    /// <param name="addressOf">What stands for an address in <c>url()</c> or of an <c>@import</c>.</param>
    public static string Of(string css, Func<string, string> addressOf) => new StyleText(css.TrimStart('\uFEFF'), addressOf).Write();

    private string Write()
    {
        while (at < css.Length)
        {
            Step(css[at]);
        }

        small.Append('}', open);

        // In an element an end tag would end it; a slash can be written with a backslash before it.
        return small.ToString().Replace("</", "<\\/", StringComparison.Ordinal);
    }

    private void Step(char c)
    {
        if (c is '"' or '\'')
        {
            small.Append(String());
        }
        else if (c == '\\')
        {
            Escape();
        }
        else if (char.IsWhiteSpace(c) || Starts("/*"))
        {
            Gap();
        }
        else if (Starts("url(") && !IsName(Last))
        {
            Url();
        }
        else if (Starts("@import"))
        {
            Import();
        }
        else
        {
            Plain(c);
        }
    }

    // What was escaped is a letter of a name, whatever it looks like.
    private char Last => small.Length == escaped ? 'x' : small.Length > 0 ? small[^1] : '{';

    private void Plain(char c)
    {
        at++;
        if (c == '}' && open == 0)
        {
            return;
        }

        open += c == '{' ? 1 : c == '}' ? -1 : 0;
        if (Tight.Contains(c, StringComparison.Ordinal) && Last == ' ')
        {
            small.Length--;
        }

        if (c == '}' && Last == ';')
        {
            small.Length--;
        }

        small.Append(c);
    }

    // Comments and blanks: nothing where nothing is needed, else one blank. CSS Syntax Level 3, 3.3 and 4.3.2.
    private void Gap()
    {
        var blank = false;
        while (at < css.Length && (char.IsWhiteSpace(css[at]) || Starts("/*")))
        {
            blank |= char.IsWhiteSpace(css[at]);
            at = !Starts("/*") ? at + 1 : css.IndexOf("*/", at + 2, StringComparison.Ordinal) is var end and >= 0 ? end + 2 : css.Length;
        }

        // After a colon a blank says nothing; before one it tells the selectors `a :hover` and `a:hover` apart.
        if (blank && !Tight.Contains(Last, StringComparison.Ordinal) && Last is not (':' or ' ') && at < css.Length)
        {
            small.Append(' ');
        }
        else if (!blank && at < css.Length && IsName(Last) && IsName(css[at]))
        {
            small.Append("/**/");
        }
    }

    // A backslash, and the character after it or up to six hexadecimal digits with the one blank that ends them; six need none (4.3.7).
    private void Escape()
    {
        var from = ++at;
        for (; at < css.Length && at - from < 6 && char.IsAsciiHexDigit(css[at]); at++)
        {
        }

        if (at > from)
        {
            small.Append('\\').Append('0', 6 - (at - from)).Append(css, from, at - from);
            at += at < css.Length && char.IsWhiteSpace(css[at]) ? 1 : 0;
        }
        else if (at < css.Length)
        {
            small.Append('\\').Append(css[at++]);
        }

        escaped = small.Length;
    }

    // The string with its quotes; a line end ends one that its writer left open.
    private string String()
    {
        var from = at;
        var quote = css[at++];
        for (; at < css.Length && css[at] is not '\n'; at++)
        {
            if (css[at] == '\\')
            {
                at++;
            }
            else if (css[at] == quote)
            {
                at++;
                return css[from..at];
            }
        }

        at = Math.Min(at, css.Length);
        return css[from..at] + quote;
    }

    private void Url()
    {
        at += "url(".Length;
        while (at < css.Length && char.IsWhiteSpace(css[at]))
        {
            at++;
        }

        var close = css.IndexOf(')', at) is var end and >= 0 ? end : css.Length;
        var address = at < css.Length && css[at] is '"' or '\'' ? String()[1..^1] : css[at..close].Trim();
        close = at < css.Length && css.IndexOf(')', at) is var after and >= 0 ? after : css.Length;
        at = Math.Min(close + 1, css.Length);
        small.Append("url(\"").Append(addressOf(address)).Append("\")");
    }

    private void Import()
    {
        small.Append("@import ");
        for (at += "@import".Length; at < css.Length && char.IsWhiteSpace(css[at]); at++)
        {
        }

        if (at < css.Length && css[at] is '"' or '\'')
        {
            var address = String()[1..^1];
            small.Append('"').Append(addressOf(address)).Append('"');
        }
    }

    private bool Starts(string word) => string.Compare(css, at, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0;

    private static bool IsName(char c) => char.IsLetterOrDigit(c) || c is '-' or '_' or '%';
}
