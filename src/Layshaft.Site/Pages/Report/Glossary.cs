namespace Layshaft.Site.Pages.Report;

/// <summary>One-line meanings of the words for damage.</summary>
public static class Glossary
{
    /// <summary>The key of a term in the texts.</summary>
    public static string Key(string term)
    {
        ArgumentNullException.ThrowIfNull(term);
        return "term." + term.Replace(' ', '_').Replace('-', '_');
    }

    /// <summary>The meaning of a term; null where the texts have none.</summary>
    public static string? Meaning(string term, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return composition.Texts.Has(Key(term)) ? composition.Say(Key(term)) : null;
    }
}
