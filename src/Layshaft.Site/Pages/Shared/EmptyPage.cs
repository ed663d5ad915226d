namespace Layshaft.Site.Pages.Shared;

/// <summary>The page of a folder that has none of its own, so that a host that lists folders lists nothing: what <c>empty.html</c> places.</summary>
/// <param name="Language">Language of the page.</param>
/// <param name="Words">That there is nothing here.</param>
public sealed record EmptyPage(string Language, string Words)
{
    /// <summary>Its template.</summary>
    public const string Template = "empty.html";

    /// <summary>Composes the page.</summary>
    public static EmptyPage Compose(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return new EmptyPage(composition.Texts.Language, composition.Say("page.empty"));
    }
}
