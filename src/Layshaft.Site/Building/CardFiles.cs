using Layshaft.Book.Records;
using Layshaft.Site.Cards;
using Layshaft.Site.Pages;

namespace Layshaft.Site.Building;

/// <summary>
/// The preview pictures: drawn only for a shop that names the address of its site, since nobody could ask for them else. The
/// scope of their page stands for all that they say, so a picture that is kept is not even composed.
/// </summary>
internal static class CardFiles
{
    public static IEnumerable<SiteFile> Of(Composition composition, OwnerView view, Job job, PageScope scope) =>
        composition.Shop.SiteAddress is null ? [] : [File(composition.Addresses.Card(view, job), () => CardComposer.Of(scope.Composition, view, job), scope)];

    public static IEnumerable<SiteFile> Of(Composition composition, OwnerView view, PageScope scope) =>
        composition.Shop.SiteAddress is null ? [] : [File(composition.Addresses.Card(view), () => CardComposer.Of(scope.Composition, view), scope)];

    private static SiteFile File(string path, Func<CardView> card, PageScope scope) => new(path, scope, () => MadeFile.Of(CardPicture.Png(card())));
}
