namespace Layshaft.Engineering.Settings;

/// <summary>
/// Picks shim packs: fewest shims first, then nearest to the middle of the band, then fewest thin shims. Totals are whole
/// tenths of a micrometre; the measured value is rounded to one, which its uncertainty outweighs.
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
    public const int MostThicknesses = 100;

    /// <summary>Works out what to build in.</summary>
    /// <param name="task">Trial, band, effect and stock.</param>
    /// <returns>Packs from stock, or what to buy or grind.</returns>
    /// <exception cref="ArgumentException">A thickness is given twice, the measurement is not a length, or it is further from the target than any pack.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A figure is negative where it may not be, or beyond 20 mm.</exception>
    public static ShimPlan For(ShimTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentOutOfRangeException.ThrowIfLessThan(task.MostShims ?? 0, 0, nameof(task));
        ArgumentOutOfRangeException.ThrowIfNegative(task.MostGroundUm, nameof(task));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(task.MostGroundUm, 1000, nameof(task));
        var stock = ShelfOf(task.Stock);
        var window = PackWindow.Of(task);
        if (window.ToTenths < 0)
        {
            return new ShimPlan(window.FromTenths, window.ToTenths, [], null, null);
        }

        if (window.ToTenths > TenthMicrometres.Most)
        {
            throw new ArgumentException("the trial is further from the target than any pack of shims, 20 mm", nameof(task));
        }

        var most = Math.Min(task.MostShims ?? MostShims, MostShims);
        var result = new PackResult(task, stock, window);
        var shelf = stock.Select(shim => new ShimKind(Tenths(shim), Math.Min(shim.Count, most), 1)).ToArray();
        var search = new PackSearch(shelf, window.ToTenths + Ground(task), most);
        var packs = search.In(window.FromTenths, window.ToTenths, window.TwiceMiddleTenths);
        return packs.Count > 0
            ? new ShimPlan(window.FromTenths, window.ToTenths, [.. packs.Select(result.FromStock)], null, null)
            : new ShimPlan(window.FromTenths, window.ToTenths, [], Bought(shelf, window, most, result), Ground(search, window, task, result));
    }

    private static ShimPack? Bought(ShimKind[] shelf, PackWindow window, int most, PackResult result)
    {
        ShimKind[] both = [.. shelf, .. shelf.Select(kind => kind with { Count = MostBought, Cost = BuyingCost })];
        var packs = new PackSearch(both, window.ToTenths, most).In(window.FromTenths, window.ToTenths, window.TwiceMiddleTenths);
        return packs.Count > 0 ? result.WithPurchase(packs[0]) : null;
    }

    private static ShimPack? Ground(PackSearch search, PackWindow window, ShimTask task, PackResult result)
    {
        // The middle of the band, in whole micrometres, and never a pack below nothing.
        var middle = Math.Max(window.TwiceMiddleTenths >> 1, 0);
        var whole = middle - (middle % TenthMicrometres.PerMicrometre);
        var wanted = whole >= window.FromTenths ? whole : middle;
        var packs = search.In(window.ToTenths + 1, wanted + Ground(task), 2 * wanted);
        return packs.Select(pack => result.WithGrinding(pack, wanted)).FirstOrDefault(pack => pack is not null);
    }

    private static int Ground(ShimTask task) => task.MostGroundUm * TenthMicrometres.PerMicrometre;

    private static ShimStock[] ShelfOf(IReadOnlyList<ShimStock> stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stock.Count, MostThicknesses, nameof(stock));
        foreach (var shim in stock)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(Tenths(shim), nameof(stock));
            ArgumentOutOfRangeException.ThrowIfNegative(shim.Count, nameof(stock));
            ArgumentOutOfRangeException.ThrowIfNegative(shim.Tolerance.Micrometers, nameof(stock));
        }

        var sorted = stock.OrderByDescending(Tenths).ToArray();
        var twice = sorted.Zip(sorted.Skip(1)).FirstOrDefault(pair => Tenths(pair.First) == Tenths(pair.Second));
        return twice.First is null
            ? sorted
            : throw new ArgumentException($"shims of {twice.First.Thickness} are listed twice: add their counts", nameof(stock));
    }

    private static int Tenths(ShimStock shim) => TenthMicrometres.Nearest(shim.Thickness, "shim thickness");
}
