using System.Security.Cryptography;
using System.Text.Json;
using Layshaft.Book.Records;
using Layshaft.Site.Cards;
using Layshaft.Site.Pages;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building;

/// <summary>The preview pictures: drawn only for a shop that names the address of its site, since nobody could ask for them else.</summary>
internal static class CardFiles
{
    public static IEnumerable<SiteFile> Of(Composition composition, OwnerView view, Job job, PageScope scope) =>
        composition.Shop.SiteAddress is null ? [] : [File(composition.Addresses.Card(view, job), CardComposer.Of(composition, view, job), scope)];

    public static IEnumerable<SiteFile> Of(Composition composition, OwnerView view, PageScope scope) =>
        composition.Shop.SiteAddress is null ? [] : [File(composition.Addresses.Card(view), CardComposer.Of(composition, view), scope)];

    private static SiteFile File(string path, CardView card, PageScope scope) =>
        new(path, scope, () => MadeFile.Of(CardPicture.Png(card))) { Inputs = [new PlanInput("card", Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(card))))] };
}
