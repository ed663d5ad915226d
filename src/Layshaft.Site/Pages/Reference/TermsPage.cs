using Layshaft.Book.Records;
using Layshaft.Site.Charts.Terms;
using Layshaft.Site.Html;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Reference;

/// <summary>The public page of the words for damage: what <c>terms.html</c> places.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Lead">What the page is.</param>
/// <param name="Families">The words, by what they are about.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record TermsPage(PageHead Head, string Heading, string Lead, IReadOnlyList<TermFamilyView> Families, PageFoot Foot)
{
    /// <summary>Its template.</summary>
    public const string Template = "terms.html";

    /// <summary>Composes the page.</summary>
    public static TermsPage Compose(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return new TermsPage(
            PageFrame.Head(
                composition,
                Addresses.Terms,
                composition.Say("term.page.title", ("shop", composition.Shop.Name)),
                composition.Say("term.page.description"),
                links: new LinkView(Addresses.Link(Addresses.Terms, Addresses.ReferenceIndex), composition.Say("reference.to_index"))),
            composition.Say("term.page.heading"),
            composition.Say("term.page.lead"),
            [
                .. DamageTerms.All.GroupBy(t => t.Family).Select(family => new TermFamilyView(
                    composition.Say($"term.family.{Name(family.Key)}"), [.. family.Select(t => TermView.Of(t, composition))])),
            ],
            PageFrame.PlainFoot(composition));
    }

    private static string Name(TermFamily family) => family switch
    {
        TermFamily.GearTooth => "gear",
        TermFamily.Bearing => "bearing",
        TermFamily.Friction => "friction",
        TermFamily.Mechanism => "mechanism",
        _ => "engagement",
    };
}

/// <summary>Words about one kind of part.</summary>
/// <param name="Name">The kind of part.</param>
/// <param name="Terms">The words.</param>
public sealed record TermFamilyView(string Name, IReadOnlyList<TermView> Terms);

/// <summary>A word for damage with its drawing.</summary>
/// <param name="Anchor">Its place on the page of all words.</param>
/// <param name="Word">The word.</param>
/// <param name="Meaning">One sentence.</param>
/// <param name="Drawing">The drawing.</param>
public sealed record TermView(string Anchor, string Word, string Meaning, RawHtml Drawing)
{
    /// <summary>The view of a word.</summary>
    public static TermView Of(DamageTerm term, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(term);
        var name = Glossary.Name(term, composition);
        return new TermView(term.Word.Replace(' ', '-'), name, Glossary.Meaning(term, composition), TermDrawing.Draw(term, name));
    }
}
