using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>Parts to order for open jobs against stock, shims in stock, instruments due for calibration.</summary>
public static class StoresPage
{
    /// <summary>How far ahead a calibration is announced, in days.</summary>
    private const int CalibrationSoonInDays = 61;

    /// <summary>The tables of the page, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["order", "shims", "instruments"];

    /// <summary>Composes the page.</summary>
    public static SheetPage Compose(ShopContext shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        TableView[] tables = [Order(shop), Shims(shop), Instruments(shop)];
        return shop.Page(
            ShopContext.Stores,
            "shop.stores",
            tables,
            BlocksView.Section("order", shop.Say("shop.order"), tables.Named("order").Rows.Count > 0 ? new Block { Lines = [shop.Say("shop.order.words")], Table = tables.Named("order") } : Block.Say(shop.Say("shop.order.none"))),
            BlocksView.Section("instruments", shop.Say("shop.instruments"), tables.Named("instruments").Rows.Count > 0 ? new Block { Table = tables.Named("instruments") } : Block.Say(shop.Say("shop.instruments.none"))),
            BlocksView.Section("shims", shop.Say("shop.shims"), tables.Named("shims").Rows.Count > 0 ? [new Block { Lines = [.. Low(shop).DefaultIfEmpty(shop.Say("shop.shims.all"))] }, new Block { Table = tables.Named("shims"), Fold = shop.Say("shop.shims.fold") }] : [Block.Say(shop.Say("shop.shims.none"))]));
    }

    private static TableView Order(ShopContext shop) => TableView.Of(
        "order",
        shop.Say("shop.order.caption"),
        [
            shop.Say("shop.part"), shop.Say("shop.gearbox"), shop.Say("shop.needed"), shop.Say("shop.needed_if"), shop.Say("shop.stock"),
            shop.Say("shop.to_order"), shop.Say("shop.cost"), shop.Say("shop.for_jobs"),
        ],
        PartsNeeded.Of(shop).Select(n => (IReadOnlyList<Cell>)
        [
            Cell.Of(n.Part.Name),
            Cell.Of(n.Gearbox.Name),
            Cell.Count(n.Agreed),
            Cell.Count(n.Open),
            n.Part.Stock is { } stock ? Cell.Count(stock) : Cell.Of(shop.Say("shop.not_counted")),
            n.ToOrder > 0 ? Cell.Count(n.ToOrder) with { Strong = true } : Cell.Count(0),
            Cell.Money(n.Part.Cost, shop.Composition),
            Cell.Of(string.Join(", ", n.Jobs)),
        ]));

    private static TableView Shims(ShopContext shop) => TableView.Of(
        "shims",
        shop.Say("shop.shims.caption"),
        [shop.Say("shop.gearbox"), shop.Say("shop.shim_kind"), shop.Say("shop.thickness"), shop.Say("shop.count")],
        shop.Book.Gearboxes.Values.SelectMany(g => g.Shims.SelectMany(s => s.Stock.OrderBy(t => t.Thickness).Select(t => (IReadOnlyList<Cell>)
        [
            Cell.Of(g.Name), Cell.Of(s.Name), Cell.Of(shop.Composition.Figures.Length(t.Thickness, 2), ShownUnit.For(t.Thickness, shop.Composition).Of(t.Thickness)), Cell.Count(t.Count),
        ]))));

    private static IEnumerable<string> Low(ShopContext shop) => shop.Book.Gearboxes.Values.SelectMany(g => g.Shims)
        .Select(s => (Shims: s, None: s.Stock.Where(t => t.Count == 0).OrderBy(t => t.Thickness).ToArray()))
        .Where(s => s.None.Length > 0)
        .Select(s => shop.Say("shop.shims.out", ("name", s.Shims.Name), ("thicknesses", string.Join(", ", s.None.Select(t => shop.Composition.Figures.Length(t.Thickness, 2).Text)))));

    private static TableView Instruments(ShopContext shop) => TableView.Of(
        "instruments",
        shop.Say("shop.instruments.caption"),
        [shop.Say("shop.instrument"), shop.Say("shop.calibrated"), shop.Say("shop.calibration_due"), shop.Say("shop.state")],
        shop.Composition.Shop.Instruments.OrderBy(i => i.Due).ThenBy(i => i.Id, StringComparer.Ordinal).Select(i => (IReadOnlyList<Cell>)
        [
            Cell.Of(i.Name),
            Cell.Day(i.Calibrated, shop.Composition),
            Cell.Day(i.Due, shop.Composition),
            i.Due < shop.AsOf ? Cell.Of(shop.Say("shop.calibration.overdue")) with { Strong = true }
                : i.Due <= shop.AsOf.AddDays(CalibrationSoonInDays) ? Cell.Of(shop.Say("shop.calibration.soon")) with { Strong = true }
                : Cell.Of(shop.Say("shop.calibration.good")),
        ]));
}
