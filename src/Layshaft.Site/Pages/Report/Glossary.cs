using Layshaft.Book.Records;

namespace Layshaft.Site.Pages.Report;

/// <summary>The words for damage in the language of the pages, each with its meaning in one line.</summary>
public static class Glossary
{
    /// <summary>The key of a word's meaning in the texts; its name has <c>.name</c> after it.</summary>
    public static string Key(string term)
    {
        ArgumentNullException.ThrowIfNull(term);
        return "term." + term.Replace(' ', '_').Replace('-', '_');
    }

    /// <summary>The word itself.</summary>
    public static string Name(DamageTerm term, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(term);
        ArgumentNullException.ThrowIfNull(composition);
        return composition.Say(Key(term.Word) + ".name");
    }

    /// <summary>What it means, in one sentence.</summary>
    public static string Meaning(DamageTerm term, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(term);
        ArgumentNullException.ThrowIfNull(composition);
        return composition.Say(Key(term.Word));
    }
}
