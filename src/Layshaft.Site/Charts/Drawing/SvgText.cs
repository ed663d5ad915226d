using System.Buffers;
using System.Text;
using System.Xml;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>
/// Puts text into a buffer of SVG, escaped. Characters that XML cannot carry (controls, lone surrogates) become the
/// replacement character.
/// </summary>
internal static class SvgText
{
    // What needs a second look; all else is copied as it stands.
    private static readonly SearchValues<char> Special = SearchValues.Create(
        [.. Enumerable.Range(0, char.MaxValue + 1).Select(c => (char)c).Where(c => c is '&' or '<' or '>' or '"' or '\t' or '\n' or '\r' || !XmlConvert.IsXmlChar(c))]);

    /// <summary>Text between two tags.</summary>
    /// <returns>The buffer's length with it.</returns>
    public static int Content(string? text, ref char[] buffer, int length) => Put(text, ref buffer, length, isAttribute: false);

    /// <summary>The value of an attribute.</summary>
    /// <returns>The buffer's length with it.</returns>
    public static int Attribute(string? text, ref char[] buffer, int length) => Put(text, ref buffer, length, isAttribute: true);

    /// <summary>The value of an attribute by itself.</summary>
    public static string Attribute(string? text)
    {
        var buffer = ArrayPool<char>.Shared.Rent(256);
        var length = Put(text, ref buffer, 0, isAttribute: true);
        var escaped = new string(buffer, 0, length);
        ArrayPool<char>.Shared.Return(buffer);
        return escaped;
    }

    /// <summary>Makes room behind what the buffer holds.</summary>
    public static void Grow(ref char[] buffer, int length, int more)
    {
        if (buffer.Length - length < more)
        {
            var larger = ArrayPool<char>.Shared.Rent(Math.Max(2 * buffer.Length, length + more));
            buffer.AsSpan(0, length).CopyTo(larger);
            ArrayPool<char>.Shared.Return(buffer);
            buffer = larger;
        }
    }

    private static int Put(string? text, ref char[] buffer, int length, bool isAttribute)
    {
        var rest = text.AsSpan();
        while (!rest.IsEmpty)
        {
            var plain = rest.IndexOfAny(Special);
            plain = plain < 0 ? rest.Length : plain;
            length = Copy(rest[..plain], ref buffer, length);
            rest = rest[plain..];
            if (!rest.IsEmpty)
            {
                Rune.DecodeFromUtf16(rest, out var rune, out var used);
                length = Copy(Escape(rune, rest[..used], rest.Length > 1 && rest[1] == '\n', isAttribute), ref buffer, length);
                rest = rest[used..];
            }
        }

        return length;
    }

    private static ReadOnlySpan<char> Escape(Rune rune, ReadOnlySpan<char> asItStands, bool beforeNewLine, bool isAttribute) => rune.Value switch
    {
        '&' => "&amp;",
        '<' => "&lt;",
        '>' => "&gt;",
        '"' when isAttribute => "&quot;",
        '\t' when isAttribute => "&#x9;",
        '\n' when isAttribute => "&#xA;",
        '\r' when isAttribute => "&#xD;",
        '\r' => beforeNewLine ? "" : "\n",
        <= 0xFFFF and var c when !XmlConvert.IsXmlChar((char)c) => "\uFFFD",

        // Half of a pair that lacks its other half decodes to the replacement character, which stands for it.
        0xFFFD => "\uFFFD",
        _ => asItStands,
    };

    private static int Copy(ReadOnlySpan<char> text, ref char[] buffer, int length)
    {
        Grow(ref buffer, length, text.Length);
        text.CopyTo(buffer.AsSpan(length));
        return length + text.Length;
    }
}
