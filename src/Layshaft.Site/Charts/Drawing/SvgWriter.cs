using System.Text;
using System.Xml;
using Layshaft.Site.Html;

namespace Layshaft.Site.Charts.Drawing;

/// <summary>Writes one SVG element tree; escaping and nesting are the XML writer's.</summary>
internal sealed class SvgWriter : IDisposable
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    private static readonly XmlWriterSettings Settings = new()
    {
        OmitXmlDeclaration = true,
        ConformanceLevel = ConformanceLevel.Fragment,
        Indent = true,
        IndentChars = string.Empty,
        NewLineChars = "\n",
    };

    private readonly StringBuilder markup = new();
    private readonly XmlWriter xml;

    public SvgWriter() => xml = XmlWriter.Create(markup, Settings);

    public SvgWriter Open(string element, string? cssClass = null)
    {
        xml.WriteStartElement(element, Namespace);
        return cssClass is null ? this : With("class", cssClass);
    }

    public SvgWriter With(string attribute, string value)
    {
        xml.WriteAttributeString(attribute, Clean(value));
        return this;
    }

    public SvgWriter With(string attribute, double value) => With(attribute, SvgNumber.Of(value));

    public SvgWriter Say(string text)
    {
        xml.WriteString(Clean(text));
        return this;
    }

    public SvgWriter Close()
    {
        xml.WriteEndElement();
        return this;
    }

    public RawHtml Finish()
    {
        xml.Flush();
        return new RawHtml(markup.ToString());
    }

    public void Dispose() => xml.Dispose();

    /// <summary>Characters that XML cannot carry (controls, lone surrogates) become the replacement character.</summary>
    private static string Clean(string? text)
    {
        if (text is null)
        {
            return string.Empty;
        }

        StringBuilder clean = new(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            var legal = rune.Value > 0xFFFF || XmlConvert.IsXmlChar((char)rune.Value);
            clean.Append((legal ? rune : Rune.ReplacementChar).ToString());
        }

        return clean.ToString();
    }
}
