using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Figures;
using Layshaft.Site.Look;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Pages;

/// <summary>What every page is composed from. Immutable; threads share it.</summary>
/// <param name="Assessment">The book, worked out.</param>
/// <param name="Texts">The words.</param>
/// <param name="Figures">How figures are written.</param>
/// <param name="Addresses">Where each page is.</param>
/// <param name="Pictures">What is known of the book's pictures.</param>
/// <param name="Notes">The book's Markdown files, by path.</param>
public sealed record Composition(
    BookAssessment Assessment,
    Texts Texts,
    FigureWriter Figures,
    Addresses Addresses,
    PictureIndex Pictures,
    IReadOnlyDictionary<string, string> Notes)
{
    /// <summary>The styles that stand in the head of each page.</summary>
    public PageStyles Styles { get; init; } = PageStyles.None;

    /// <summary>What a customer's pages may say of other customers' gearboxes.</summary>
    public OtherUnits Others { get; init; } = OtherUnits.None;

    /// <summary>The book.</summary>
    public ShopBook Book => Assessment.Book;

    /// <summary>The shop.</summary>
    public Shop Shop => Book.Shop;

    /// <summary>Whether the page is about a unit that is not a gearbox.</summary>
    public bool AboutOtherUnit { get; init; }

    /// <summary>The same for the pages of a type of unit: a differential is not called a gearbox.</summary>
    public Composition About(Gearbox type) => type is { Kind: not UnitKind.Gearbox } ? this with { AboutOtherUnit = true } : this;

    /// <summary>A sentence of the texts; about a unit that is not a gearbox, the sentence that suits it.</summary>
    public string Say(string key, params (string Name, object Value)[] values) =>
        Texts.Say(AboutOtherUnit && Texts.Has($"{key}.of_unit") ? $"{key}.of_unit" : key, values);
}
