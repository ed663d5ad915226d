using System.Buffers;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>
/// Writes one SVG element tree. What stands in text and attributes is escaped; elements close in the order in which they were
/// opened, each that holds no text on a line of its own.
/// </summary>
/// <remarks>
/// Drawings are most of a report's bytes, so characters go straight into one borrowed buffer. The tests hold it against the
/// framework's XML writer, character by character.
/// </remarks>
internal sealed class SvgWriter : IDisposable
{
    private const string Namespace = " xmlns=\"http://www.w3.org/2000/svg\"";

    private readonly Stack<(string Name, bool HoldsText)> open = new();
    private char[] buffer = ArrayPool<char>.Shared.Rent(16 * 1024);
    private int length;
    private int contentFrom;
    private bool inTag;

    public SvgWriter Open(string element, string? cssClass = null)
    {
        EndTag();
        var inText = open.Count > 0 && open.Peek().HoldsText;
        if (length > 0 && !inText)
        {
            Append("\n");
        }

        Append("<");
        Append(element);
        open.Push((element, inText));
        inTag = true;
        return cssClass is null ? this : With("class", cssClass);
    }

    public SvgWriter With(string attribute, string? value)
    {
        Begin(attribute);
        length = SvgText.Attribute(value, ref buffer, length);
        Append("\"");
        return this;
    }

    public SvgWriter With(string attribute, double value)
    {
        Begin(attribute);
        SvgText.Grow(ref buffer, length, SvgNumber.Room);
        if (SvgNumber.TryWrite(value, buffer.AsSpan(length), out var digits))
        {
            length += digits;
        }
        else
        {
            Append(SvgNumber.Of(value));
        }

        Append("\"");
        return this;
    }

    public SvgWriter Say(string? text)
    {
        EndTag();
        open.Push((open.Pop().Name, true));
        contentFrom = -1; // an element that was given text, even none, is closed by a tag of its own
        length = SvgText.Content(text, ref buffer, length);
        return this;
    }

    public SvgWriter Close()
    {
        EndTag();
        var (name, holdsText) = open.Pop();
        if (length == contentFrom)
        {
            length--;
            Append(" />");
            return this;
        }

        Append(holdsText ? "</" : "\n</");
        Append(name);
        Append(">");
        return this;
    }

    public RawHtml Finish() => new(new string(buffer, 0, length));

    public void Dispose()
    {
        ArrayPool<char>.Shared.Return(buffer);
        buffer = [];
    }

    private void Begin(string attribute)
    {
        Append(" ");
        Append(attribute);
        Append("=\"");
    }

    private void EndTag()
    {
        if (inTag)
        {
            Append(open.Count == 1 ? Namespace + ">" : ">");
            contentFrom = length;
            inTag = false;
        }
    }

    private void Append(string text)
    {
        SvgText.Grow(ref buffer, length, text.Length);
        text.CopyTo(buffer.AsSpan(length));
        length += text.Length;
    }
}
