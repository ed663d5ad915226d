namespace Layshaft.Site.Publishing.Links;

/// <summary>The list of a site's links for a person to read: withdrawn ones first, each with what to send in its place.</summary>
internal static class LinkList
{
    /// <summary>The list, one link a line.</summary>
    /// <param name="history">The links.</param>
    internal static string Of(LinkHistory history) => string.Concat(history.Links.OrderBy(l => l.IsOpen).Select(l => l.IsOpen
        ? $"open       {Line(l)}\n"
        : $"withdrawn  {Line(l)}  {(history.InPlaceOf(l) is { } open ? $"now {open.Folder}/index.html" : "no link in its place")}\n"));

    private static string Line(KnownLink link) => $"{link.Folder}/index.html  {link.Unit}  {link.Customer}  {OneLine(link.Name)}";

    private static string OneLine(string name) => string.Concat(name.Select(c => char.IsControl(c) ? ' ' : c));
}
