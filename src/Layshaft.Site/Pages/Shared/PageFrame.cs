using Layshaft.Book.Records;
using Layshaft.Site.Look;
using Layshaft.Site.Notes;

namespace Layshaft.Site.Pages.Shared;

/// <summary>Makes the head and the foot that all pages share.</summary>
public static class PageFrame
{
    // A logo so much wider than high is a name already.
    private const double WordMark = 2.5;

    /// <summary>The head of a page.</summary>
    /// <param name="composition">What pages are composed from.</param>
    /// <param name="page">Path of the page; its first folder holds the look.</param>
    /// <param name="title">Title of the page.</param>
    /// <param name="description">One sentence for a preview card, or null.</param>
    /// <param name="sheet">A sheet of the look besides those of every page; null for none.</param>
    /// <param name="rules">Rules of style of this page alone.</param>
    /// <param name="links">Links of the head.</param>
    public static PageHead Head(
        Composition composition, string page, string title, string? description, string? sheet = null, string rules = "", params LinkView[] links)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(page);
        var tree = page[..page.IndexOf('/', StringComparison.Ordinal)];
        var style = composition.Styles.For(Addresses.Link(page, $"{tree}/look/"), sheet, rules);
        return new PageHead(
            composition.Texts.Language,
            title,
            description,
            Policy(style),
            tree != Addresses.Reference,
            style.Text,
            composition.Shop.Name,
            Logo(composition, page, tree),
            links);
    }

    /// <summary>The foot of a page that is no customer's: without the closing words, which are to the owner of a unit.</summary>
    public static PageFoot PlainFoot(Composition composition) => Foot(composition) with { Closing = null };

    /// <summary>The foot of a customer's page.</summary>
    public static PageFoot Foot(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var shop = composition.Shop;
        return new PageFoot(
            shop.Name,
            shop.Address,
            shop.Email,
            shop.Telephone,
            TelephoneLink(shop),
            shop.ClosingWords is { } words ? NoteRenderer.Render(words, 2).Html : null);
    }

    /// <summary>The number as a link has it.</summary>
    public static string TelephoneLink(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return string.Concat(shop.Telephone.Where((c, i) => char.IsAsciiDigit(c) || (c == '+' && i == 0)));
    }

    private static LogoView? Logo(Composition composition, string page, string tree) =>
        composition.Shop.Logo is { } logo && composition.Pictures.Get(logo) is { Large: var size }
            ? new LogoView(Addresses.Link(page, Addresses.Logo(tree)), size.Width, size.Height, size.Width >= WordMark * size.Height)
            : null;

    // Nothing from elsewhere, no script, and of styles that stand in the page only its own.
    private static string Policy(PageStyle style)
    {
        var own = style.Text is null ? string.Empty : $" 'sha256-{style.Hash}'";
        return $"default-src 'none'; img-src 'self' data:; style-src 'self'{own}; font-src 'self'; base-uri 'none'; form-action 'none'";
    }
}
