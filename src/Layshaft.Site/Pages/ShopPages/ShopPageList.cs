using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>What one of the shop's pages is composed from, besides the book without its jobs and its newest day.</summary>
[Flags]
public enum ShopSources
{
    /// <summary>Nothing else.</summary>
    None = 0,

    /// <summary>The tally of all units.</summary>
    Units = 1,

    /// <summary>The tally of all jobs.</summary>
    Jobs = 2,

    /// <summary>The lives of all parts.</summary>
    Lives = 4,

    /// <summary>The jobs of which a unit is still in the shop.</summary>
    Bench = 8,
}

/// <summary>One of the shop's pages.</summary>
/// <param name="Title">The key of its title, also in the navigation: <c>shop.</c> and its short name.</param>
/// <param name="Path">Where it is.</param>
/// <param name="Tables">The short names of its tables.</param>
/// <param name="Sources">What it is composed from: it is made anew when that changes, and is given nothing else.</param>
/// <param name="Compose">Says what it says.</param>
public sealed record ShopPage(string Title, string Path, IReadOnlyList<string> Tables, ShopSources Sources, Func<ShopContext, SheetPage> Compose)
{
    /// <summary>Its short name.</summary>
    public string Name => Title["shop.".Length..];
}

/// <summary>The shop's pages.</summary>
public static class ShopPageList
{
    /// <summary>All of them, in the order of the navigation.</summary>
    public static IReadOnlyList<ShopPage> All { get; } =
    [
        new("shop.bench", ShopContext.Bench, BenchPage.Tables, ShopSources.Units | ShopSources.Bench, BenchPage.Compose),
        new("shop.service", ShopContext.Service, ServicePage.Tables, ShopSources.Units | ShopSources.Bench, ServicePage.Compose),
        new("shop.lives", ShopContext.Lives, LivesPage.Tables, ShopSources.Lives, LivesPage.Compose),
        new("shop.stores", ShopContext.Stores, StoresPage.Tables, ShopSources.Bench, StoresPage.Compose),
        new("shop.seasons", ShopContext.Seasons, SeasonsPage.Tables, ShopSources.Units | ShopSources.Jobs, SeasonsPage.Compose),
    ];
}
