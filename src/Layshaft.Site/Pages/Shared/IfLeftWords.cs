namespace Layshaft.Site.Pages.Shared;

/// <summary>What happens to a part or a line of work that is left as it is.</summary>
internal static class IfLeftWords
{
    /// <summary>The sentence; null where the book does not say.</summary>
    /// <param name="what">What happens, in the book's words.</param>
    /// <param name="composition">What the page is composed from.</param>
    public static string? Say(string? what, Composition composition) => what is null ? null : composition.Say("finding.if_left", ("what", what));
}
