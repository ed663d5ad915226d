using Layshaft.Book.Problems;

namespace Layshaft.Site.Publishing.Links;

/// <summary>What a publish does to the links of a site.</summary>
/// <param name="History">All links once it is done.</param>
/// <param name="Clashes">Links that would open for somebody else; with any, nothing is published.</param>
/// <param name="Withdrawn">Links that open now and will not.</param>
/// <param name="IsMove">Whether some of those hung on a place in the list of owners, see <see cref="CustomerKeys.OfPlace"/>.</param>
internal sealed record LinkStep(LinkHistory History, IReadOnlyList<LinkClash> Clashes, IReadOnlyList<KnownLink> Withdrawn, bool IsMove)
{
    /// <summary>The clashes as problems of the book, one for each customer's file and former name.</summary>
    internal IReadOnlyList<Problem> Problems() =>
    [
        .. Clashes.GroupBy(c => (c.Reader.Place, c.Known.Name)).OrderBy(g => g.Key.Place).Select(same =>
        {
            var (was, now) = (same.First().Known.Name, same.First().Reader);
            var links = string.Join(", ", same.Select(c => $"{c.Known.Folder}/ (unit {c.Known.Unit})"));
            return new Problem(
                "link-reader",
                now.Place,
                $"'{now.Name}' would open links of '{was}': {links}.",
                $"For another person or team, restore '{was}' here and create another customer file. If the same person or team was renamed, add 'formerly: {was}'.");
        }),
    ];
}

/// <summary>A link that would open for somebody else.</summary>
/// <param name="Known">Whose it is.</param>
/// <param name="Reader">Whom it would open for.</param>
internal sealed record LinkClash(KnownLink Known, LinkReader Reader);
