using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>What is due, unit by unit: visits, and parts whose service life runs out.</summary>
public static class ServicePage
{
    /// <summary>The tables of the page, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["visits", "parts", "looks"];

    /// <summary>Composes the page.</summary>
    public static SheetPage Compose(ShopContext shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        ServiceDue[] due = [.. shop.Tally.Units.SelectMany(t => Due(t, shop)).OrderByDescending(d => d.State).ThenBy(d => d.By ?? DateOnly.MaxValue).ThenBy(d => d.Unit.Id, StringComparer.Ordinal)];
        var use = shop.Tally.Units.ToDictionary(t => t.Unit, t => t.Use, StringComparer.Ordinal);
        TableView[] tables =
        [
            Table("visits", due.Where(d => d.Part is null), use, shop),
            Table("parts", due.Where(d => d is { Part: not null, State: not DueState.NotYet }), use, shop),
            Looks(shop),
        ];
        return shop.Page(
            ShopContext.Service,
            "shop.service",
            tables,
            Section("visits", "shop.visits", tables.Named("visits"), shop),

            // Unit, part, day and remaining usage: what fits a phone, however many parts are due.
            Section("parts", "shop.service_parts", tables.Named("parts").Only(0, 1, 3, 5), shop),
            Section("looks", "shop.wear_due", tables.Named("looks"), shop));
    }

    private static IEnumerable<ServiceDue> Due(UnitTally tally, ShopContext shop) =>
        shop.Book.Units[tally.Unit] is var unit ? ServiceAssessment.On(shop.AsOf, unit, shop.Book.GearboxOf(unit), tally.Terms) : [];

    private static SectionView? Section(string id, string key, TableView table, ShopContext shop) => BlocksView.Section(
        id, shop.Say(key), table.Rows.Count > 0 ? new Block { Lines = [shop.Say(key + ".words"), .. shop.Shortened(table, "shop.rows.first")], Table = table.First(ShopContext.MostRows) } : Block.Say(shop.Say("shop.nothing_due")));

    private static TableView Table(string id, IEnumerable<ServiceDue> due, Dictionary<string, Use> use, ShopContext shop) => TableView.Of(
        id,
        shop.Say($"shop.{id}.caption"),
        [shop.Say("shop.unit"), shop.Say(id == "visits" ? "shop.customer" : "shop.part"), shop.Say("shop.due"), shop.Say("shop.due_by"), shop.Say("shop.due_at"), shop.Say("shop.due_left"), shop.Say("shop.here")],
        due.Select(d => (IReadOnlyList<Cell>)
        [
            shop.UnitCell(d.Unit, ShopContext.Service),
            Cell.Of(d.Part?.Name ?? shop.Book.Customers[d.Unit.Owners[^1].Customer].Name),
            Cell.Of(shop.Say(StateKey(d.State))) with { Strong = d.State != DueState.NotYet, Whole = true },
            Cell.Day(d.By, shop.Composition),
            Cell.Use(d.At, shop.Composition),
            Left(d, use[d.Unit.Id], shop),
            Cell.Of(shop.OpenJobOf(d.Unit) is { } job ? shop.Say("shop.here.job", ("number", job.Number)) : null) with { Whole = true },
        ]));

    private static Cell Left(ServiceDue due, Use known, ShopContext shop) =>
        due.At is { } at && at.Measure == known.Measure && at.Amount < known.Amount
            ? Cell.Use(at with { Amount = at.Amount - known.Amount }, shop.Composition) with { Text = shop.Say("shop.over", ("use", UseWords.Of(known with { Amount = known.Amount - at.Amount }, shop.Composition))), Strong = true }
            : Cell.Use(due.Left, shop.Composition);

    // What the wear itself asks for, whatever the last job wrote: parts that may reach their limit soonest.
    private static TableView Looks(ShopContext shop) => TableView.Of(
        "looks",
        shop.Say("shop.wear_due.caption"),
        [shop.Say("shop.unit"), shop.Say("shop.part"), shop.Say("history.measure"), shop.Say("history.inspect_within"), shop.Say("history.inspect_by"), shop.Say("history.limit_in")],
        shop.Tally.Units.Where(t => t.Look is not null).OrderBy(t => t.Look!.By ?? DateOnly.MaxValue)
            .Select(t => (Unit: shop.Book.Units[t.Unit], Look: t.Look!))
            .Select(t => (t.Unit, t.Look, Part: shop.Book.GearboxOf(t.Unit).PartOf(t.Look.Part)!))
            .Select(t => (IReadOnlyList<Cell>)
            [
                shop.UnitCell(t.Unit, ShopContext.Service),
                Cell.Of(t.Part.Name),
                Cell.Of(t.Part.Measures.First(m => m.Id == t.Look.Measure).Name),
                Cell.Use(Whole(t.Look.Within), shop.Composition),
                Cell.Day(t.Look.By, shop.Composition),
                Cell.Use(Whole(t.Look.Limit), shop.Composition),
            ]));

    private static Use Whole(Use use) => use with { Amount = Math.Floor(use.Amount) };

    private static string StateKey(DueState state) => state switch
    {
        DueState.Now => "shop.due.now",
        DueState.Soon => "shop.due.soon",
        DueState.NotYet => "shop.due.not_yet",
    };
}
