namespace Layshaft.Site.Publishing;

/// <summary>Gives the text of a path: that which is in memory already, where there is one.</summary>
/// <param name="path">The path.</param>
internal delegate string PathText(ReadOnlySpan<char> path);
