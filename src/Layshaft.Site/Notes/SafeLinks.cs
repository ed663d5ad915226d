using System.Globalization;
using Markdig;
using Markdig.Renderers;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Layshaft.Site.Notes;

/// <summary>
/// Writes the links of a note, and no other: whatever the parser made of nested brackets and whatever the walk over the note
/// missed, a picture or an address that is not allowed becomes its own words here, where markup is made.
/// </summary>
internal sealed class SafeLinks : LinkInlineRenderer
{
    /// <summary>The note as markup.</summary>
    public static string Write(MarkdownDocument note, MarkdownPipeline pipeline)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer);
        pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<LinkInlineRenderer>(new SafeLinks());
        renderer.Render(note);
        writer.Flush();
        return writer.ToString();
    }

    /// <inheritdoc/>
    protected override void Write(HtmlRenderer renderer, LinkInline link)
    {
        ArgumentNullException.ThrowIfNull(link);
        if (link.IsImage || !NoteLinks.IsAllowed(link.GetDynamicUrl?.Invoke() ?? link.Url))
        {
            renderer.WriteChildren(link);
        }
        else
        {
            base.Write(renderer, link);
        }
    }
}
