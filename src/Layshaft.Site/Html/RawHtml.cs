namespace Layshaft.Site.Html;

/// <summary>
/// Markup that is placed on a page as it stands. Everything else is escaped by the template engine's output path.
/// </summary>
/// <remarks>
/// Only this assembly can make one: the Markdown renderer (raw HTML off) and the chart writer do, from text that
/// they escaped themselves. Immutable.
/// </remarks>
public sealed class RawHtml
{
    internal RawHtml(string markup) => Markup = markup;

    /// <summary>The markup; never null.</summary>
    public string Markup { get; }

    /// <inheritdoc/>
    public override string ToString() => Markup;
}
