using System.Buffers;
using System.Text;

namespace Layshaft.Site.Html;

/// <summary>Text made safe to stand in HTML, between tags and inside quoted attributes alike.</summary>
public static class HtmlText
{
    private static readonly SearchValues<char> Special = SearchValues.Create(SpecialCharacters());

    /// <summary>The text with <c>&amp; &lt; &gt; " '</c> escaped and characters that HTML forbids replaced by U+FFFD.</summary>
    /// <param name="text">Any text; null gives an empty text.</param>
    public static string Escape(string? text)
    {
        if (string.IsNullOrEmpty(text))
        {
            return string.Empty;
        }

        if (text.AsSpan().IndexOfAny(Special) < 0)
        {
            return text;
        }

        var escaped = new StringBuilder(text.Length + 32);
        var rest = text.AsSpan();
        while (!rest.IsEmpty)
        {
            var plain = rest.IndexOfAny(Special);
            if (plain < 0)
            {
                escaped.Append(rest);
                break;
            }

            escaped.Append(rest[..plain]);
            rest = rest[(plain + AppendSpecial(escaped, rest[plain..]))..];
        }

        return escaped.ToString();
    }

    /// <summary>The text without characters that HTML forbids (each becomes U+FFFD); nothing else changes.</summary>
    /// <param name="text">Any text; null gives an empty text.</param>
    /// <remarks>Forbidden: controls other than tab and line ends, surrogates that stand alone, U+FFFE and U+FFFF
    /// (HTML Living Standard, 13.2.3.5 and its definition of noncharacters; the supplementary planes' ones are let through).</remarks>
    public static string Clean(string? text)
    {
        if (string.IsNullOrEmpty(text) || text.AsSpan().IndexOfAny(Special) < 0)
        {
            return text ?? string.Empty;
        }

        var clean = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]))
            {
                clean.Append(text[i]).Append(text[++i]);
            }
            else
            {
                clean.Append(IsForbidden(text[i]) ? '\uFFFD' : text[i]);
            }
        }

        return clean.ToString();
    }

    private static int AppendSpecial(StringBuilder to, ReadOnlySpan<char> from)
    {
        switch (from[0])
        {
            case '&': to.Append("&amp;"); return 1;
            case '<': to.Append("&lt;"); return 1;
            case '>': to.Append("&gt;"); return 1;
            case '"': to.Append("&quot;"); return 1;
            case '\'': to.Append("&#39;"); return 1;
        }

        if (from.Length > 1 && char.IsSurrogatePair(from[0], from[1]))
        {
            to.Append(from[..2]);
            return 2;
        }

        to.Append('\uFFFD');
        return 1;
    }

    private static bool IsForbidden(char c) =>
        (c < ' ' && c is not ('\t' or '\n' or '\r')) || c is >= '\u007F' and <= '\u009F'
        || char.IsSurrogate(c) || c >= '\uFFFE';

    private static string SpecialCharacters()
    {
        var all = new StringBuilder("&<>\"'");
        for (var c = 0; c <= char.MaxValue; c++)
        {
            if (IsForbidden((char)c))
            {
                all.Append((char)c);
            }
        }

        return all.ToString();
    }
}
