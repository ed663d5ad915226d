using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>One of the shop's pages.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Tables">The short names of its tables.</param>
/// <param name="Compose">Says what it says.</param>
public sealed record ShopPage(string Path, IReadOnlyList<string> Tables, Func<ShopContext, SheetPage> Compose);

/// <summary>The shop's pages.</summary>
public static class ShopPageList
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ShopPage> All { get; } =
    [
        new(ShopContext.Bench, BenchPage.Tables, BenchPage.Compose),
        new(ShopContext.Service, ServicePage.Tables, ServicePage.Compose),
        new(ShopContext.Lives, LivesPage.Tables, LivesPage.Compose),
        new(ShopContext.Stores, StoresPage.Tables, StoresPage.Compose),
        new(ShopContext.Seasons, SeasonsPage.Tables, SeasonsPage.Compose),
    ];
}
