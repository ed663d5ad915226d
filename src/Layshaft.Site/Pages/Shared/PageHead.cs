using Layshaft.Site.Html;

namespace Layshaft.Site.Pages.Shared;

/// <summary>The head of a page.</summary>
/// <param name="Language">BCP 47 tag.</param>
/// <param name="Title">Title of the page.</param>
/// <param name="Description">One sentence for a preview card; null for none.</param>
/// <param name="Policy">The content security policy.</param>
/// <param name="Private">Whether search engines are told to stay away.</param>
/// <param name="Style">The styles of the page; null for none.</param>
/// <param name="Shop">The shop's name.</param>
/// <param name="Logo">The shop's logo; null for its name.</param>
/// <param name="Links">Links of the head.</param>
public sealed record PageHead(
    string Language,
    string Title,
    string? Description,
    string Policy,
    bool Private,
    RawHtml? Style,
    string Shop,
    LogoView? Logo,
    IReadOnlyList<LinkView> Links)
{
    /// <summary>The picture that messengers show beside a link to the page; null for none.</summary>
    public PreviewView? Preview { get; init; }
}

/// <summary>A preview picture.</summary>
/// <param name="Address">Its absolute address: what messengers read is not relative to a page.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
/// <param name="Words">What it shows.</param>
public sealed record PreviewView(string Address, string Width, string Height, string Words);

/// <summary>The shop's logo.</summary>
/// <param name="Source">Address.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
/// <param name="IsName">Whether it stands for the shop's name; otherwise the name stands beside it.</param>
public sealed record LogoView(string Source, int Width, int Height, bool IsName);

/// <summary>A link.</summary>
/// <param name="Address">Where to.</param>
/// <param name="Words">What it says.</param>
public sealed record LinkView(string Address, string Words);
