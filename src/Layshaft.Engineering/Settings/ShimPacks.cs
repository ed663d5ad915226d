namespace Layshaft.Engineering.Settings;

/// <summary>
/// Picks shim packs: fewest shims first, then nearest to the middle of the band, then fewest thin shims. Totals are whole
/// micrometres; the measured value is rounded to one, which its uncertainty outweighs.
/// </summary>
public static class ShimPacks
{
    /// <summary>Most shims that a purchase may add; more would not be a shim pack any more.</summary>
    private const int MostBought = 4;

    /// <summary>A shim to buy weighs more than any pack of shims from the shelf.</summary>
    private const long BuyingCost = 100_000;

    /// <summary>Most shims looked at in one pack where the maker states no limit.</summary>
    private const int MostShims = 50;

    /// <summary>Most thicknesses in one stock; more are a slip, and would make the search slow.</summary>
    private const int MostThicknesses = 100;

    /// <summary>Works out what to build in.</summary>
    /// <param name="task">Trial, band, effect and stock.</param>
    /// <returns>Packs from stock, or what to buy or grind.</returns>
    /// <exception cref="ArgumentException">A thickness is not whole in micrometres, is stated twice, or the measurement is no length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is negative where it may not be, or beyond 20 mm.</exception>
    public static ShimPlan For(ShimTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentOutOfRangeException.ThrowIfLessThan(task.MostShims ?? 0, 0, nameof(task));
        ArgumentOutOfRangeException.ThrowIfNegative(task.MostGroundUm, nameof(task));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(task.MostGroundUm, 1000, nameof(task));
        var stock = ShelfOf(task.Stock);
        var window = PackWindow.Of(task);
        if (window.ToUm < 0)
        {
            return new ShimPlan(window.FromUm, window.ToUm, [], null, null);
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(window.ToUm, Micrometres.Most, nameof(task));
        var most = Math.Min(task.MostShims ?? MostShims, MostShims);
        var result = new PackResult(task, stock, window);
        var shelf = stock.Select(shim => new ShimKind(Um(shim), Math.Min(shim.Count, most), 1)).ToArray();
        var search = new PackSearch(shelf, window.ToUm + task.MostGroundUm, most);
        var packs = search.In(window.FromUm, window.ToUm, window.TwiceMiddleUm);
        return packs.Count > 0
            ? new ShimPlan(window.FromUm, window.ToUm, [.. packs.Select(result.FromStock)], null, null)
            : new ShimPlan(window.FromUm, window.ToUm, [], Bought(shelf, window, most, result), Ground(search, window, task, result));
    }

    private static ShimPack? Bought(ShimKind[] shelf, PackWindow window, int most, PackResult result)
    {
        ShimKind[] both = [.. shelf, .. shelf.Select(kind => kind with { Count = MostBought, Cost = BuyingCost })];
        var packs = new PackSearch(both, window.ToUm, most).In(window.FromUm, window.ToUm, window.TwiceMiddleUm);
        return packs.Count > 0 ? result.WithPurchase(packs[0]) : null;
    }

    private static ShimPack? Ground(PackSearch search, PackWindow window, ShimTask task, PackResult result)
    {
        // The middle of the band, on the thinner side of a half micrometre, and never a pack below nothing.
        var wanted = Math.Max(window.TwiceMiddleUm >> 1, 0);
        var packs = search.In(window.ToUm + 1, wanted + task.MostGroundUm, 2 * wanted);
        return packs.Select(pack => result.WithGrinding(pack, wanted)).FirstOrDefault(pack => pack is not null);
    }

    private static ShimStock[] ShelfOf(IReadOnlyList<ShimStock> stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stock.Count, MostThicknesses, nameof(stock));
        foreach (var shim in stock)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(Um(shim), nameof(stock));
            ArgumentOutOfRangeException.ThrowIfNegative(shim.Count, nameof(stock));
            ArgumentOutOfRangeException.ThrowIfNegative(shim.Tolerance.Micrometers, nameof(stock));
        }

        var sorted = stock.OrderByDescending(Um).ToArray();
        var twice = sorted.Zip(sorted.Skip(1)).FirstOrDefault(pair => Um(pair.First) == Um(pair.Second));
        return twice.First is null
            ? sorted
            : throw new ArgumentException($"shims of {twice.First.Thickness} are listed twice: add their counts", nameof(stock));
    }

    private static int Um(ShimStock shim) => Micrometres.Exact(shim.Thickness, "shim thickness");
}
