using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Layshaft.Site.Publishing.Links;

/// <summary>A link that the site has or had, and its one reader.</summary>
/// <param name="Folder">The folder that it leads to, from the output folder: <c>customers/KEY</c>.</param>
/// <param name="Unit">The unit's id.</param>
/// <param name="Customer">The customer's id.</param>
/// <param name="Name">The customer's name.</param>
/// <param name="IsOpen">Whether the site has its pages; otherwise it is withdrawn.</param>
public sealed record KnownLink(string Folder, string Unit, string Customer, string Name, bool IsOpen);

/// <summary>Every link that a site has or had, each with its reader: a link once sent opens for that reader or not at all. Immutable.</summary>
internal sealed class LinkHistory
{
    private readonly IReadOnlyList<KnownLink> _links;

    private LinkHistory(IEnumerable<KnownLink> links) =>
        _links = [.. links.OrderBy(l => l.Unit, StringComparer.Ordinal).ThenBy(l => l.Customer, StringComparer.Ordinal).ThenBy(l => l.Folder, StringComparer.Ordinal)];

    /// <summary>The history of a site that never had a link.</summary>
    internal static LinkHistory None { get; } = new([]);

    /// <summary>The links, by unit, customer and address.</summary>
    internal IReadOnlyList<KnownLink> Links => _links;

    /// <summary>The history once the site is published again.</summary>
    /// <param name="readers">Whom the links of the site to be open for.</param>
    /// <param name="hasPage">Whether the site that is there has a page of ours at a path.</param>
    internal LinkStep Next(IReadOnlyList<LinkReader> readers, Func<string, bool> hasPage)
    {
        var ofCustomer = readers.DistinctBy(r => r.Customer, StringComparer.Ordinal).ToDictionary(r => r.Customer, StringComparer.Ordinal);
        var known = _links.Select(l => WithNameOfToday(l, ofCustomer)).ToDictionary(l => l.Folder, StringComparer.Ordinal);
        var (next, clashes, moved) = (new Dictionary<string, KnownLink>(StringComparer.Ordinal), new List<LinkClash>(), new List<KnownLink>());
        foreach (var reader in readers)
        {
            if (known.TryGetValue(reader.Folder, out var was) && !ReaderName.AreSame(was.Name, reader.Name))
            {
                clashes.Add(new(was, reader));
            }

            next[reader.Folder] = new(reader.Folder, reader.Unit, reader.Customer, reader.Name, IsOpen: true);
            if (reader.FolderOfPlace.Length > 0 && !known.ContainsKey(reader.FolderOfPlace) && hasPage($"{reader.FolderOfPlace}/index.html"))
            {
                moved.Add(new(reader.FolderOfPlace, reader.Unit, reader.Customer, reader.Name, IsOpen: false));
            }
        }

        KnownLink[] left = [.. known.Values.Where(l => !next.ContainsKey(l.Folder))];
        return new(
            new([.. next.Values, .. left.Select(l => l with { IsOpen = false }), .. moved]),
            clashes,
            [.. left.Where(l => l.IsOpen).Concat(moved).OrderBy(l => l.Unit, StringComparer.Ordinal).ThenBy(l => l.Folder, StringComparer.Ordinal)],
            moved.Count > 0);
    }

    /// <summary>The open link that took a withdrawn one's place; null where its reader has none for that unit.</summary>
    /// <param name="withdrawn">The withdrawn link.</param>
    internal KnownLink? InPlaceOf(KnownLink withdrawn)
    {
        KnownLink[] open = [.. _links.Where(l => l.IsOpen && l.Unit == withdrawn.Unit && ReaderName.AreSame(l.Name, withdrawn.Name))];
        return open.FirstOrDefault(l => l.Customer == withdrawn.Customer) ?? open.FirstOrDefault();
    }

    /// <summary>A history that was written.</summary>
    /// <param name="links">Its links.</param>
    /// <exception cref="FormatException">Two have the same address.</exception>
    internal static LinkHistory Of(IReadOnlyCollection<KnownLink> links) =>
        links.DistinctBy(l => l.Folder).Count() == links.Count ? new(links) : throw new FormatException();

    /// <summary>Writes the history as a property, one link a line; nothing where there never was one.</summary>
    /// <param name="buffer">Where to.</param>
    internal void Write(IBufferWriter<byte> buffer)
    {
        for (var i = 0; i < _links.Count; i++)
        {
            buffer.Write(i == 0 ? "\"links\": [\n"u8 : ",\n"u8);
            var link = _links[i];
            Write(buffer, "{\"link\": "u8, link.Folder);
            Write(buffer, ", \"unit\": "u8, link.Unit);
            Write(buffer, ", \"customer\": "u8, link.Customer);
            Write(buffer, ", \"name\": "u8, link.Name);
            buffer.Write(link.IsOpen ? ", \"open\": true}"u8 : ", \"open\": false}"u8);
        }

        buffer.Write(_links.Count > 0 ? "\n],\n"u8 : []);
    }

    // Where the book says that the name was corrected, withdrawn links learn it too.
    private static KnownLink WithNameOfToday(KnownLink link, Dictionary<string, LinkReader> ofCustomer) =>
        ofCustomer.TryGetValue(link.Customer, out var reader) && reader.Formerly is { } formerly && ReaderName.AreSame(formerly, link.Name) ? link with { Name = reader.Name } : link;

    private static void Write(IBufferWriter<byte> buffer, ReadOnlySpan<byte> before, string text)
    {
        buffer.Write(before);
        buffer.Write("\""u8);
        buffer.Write(JsonEncodedText.Encode(text, JavaScriptEncoder.UnsafeRelaxedJsonEscaping).EncodedUtf8Bytes);
        buffer.Write("\""u8);
    }
}

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
