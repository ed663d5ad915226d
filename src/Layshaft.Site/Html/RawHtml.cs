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
    internal RawHtml(string markup) => Pieces = [markup];

    // Large markup in pieces is placed piece by piece, without being joined first.
    internal RawHtml(string[] pieces) => Pieces = pieces;

    /// <summary>The markup; never null.</summary>
    public string Markup => Pieces.Length == 1 ? Pieces[0] : string.Concat(Pieces);

    internal string[] Pieces { get; }

    /// <inheritdoc/>
    public override string ToString() => Markup;
}
