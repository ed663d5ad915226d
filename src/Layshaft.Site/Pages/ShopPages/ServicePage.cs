using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>What is due, unit by unit: visits, and parts whose service life runs out.</summary>
public static class ServicePage
{
    /// <summary>The tables of the page, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["visits", "parts", "looks"];

    /// <summary>Composes the page.</summary>
    public static SheetPage Compose(Composition composition)
    {
        var shop = ShopContext.Of(composition);
        var lives = composition.Assessment.Lives;
        ServiceDue[] due = [.. shop.Book.Units.Values.SelectMany(u => ServiceAssessment.Of(u, lives, shop.AsOf)).OrderByDescending(d => d.State).ThenBy(d => d.By ?? DateOnly.MaxValue).ThenBy(d => d.Unit.Id, StringComparer.Ordinal)];
        TableView[] tables =
        [
            Table("visits", due.Where(d => d.Part is null), shop),
            Table("parts", due.Where(d => d is { Part: not null, State: not DueState.NotYet }), shop),
            Looks(shop),
        ];
        return shop.Page(
            ShopContext.Service,
            "shop.service",
            tables,
            Section("visits", "shop.visits", tables[0], shop),
            Section("parts", "shop.service_parts", tables[1], shop),
            Section("looks", "shop.looks", tables[2], shop));
    }

    private static SectionView? Section(string id, string key, TableView table, ShopContext shop) => BlocksView.Section(
        id, shop.Say(key), table.Rows.Count > 0 ? new Block { Lines = [shop.Say(key + ".words")], Table = table } : Block.Say(shop.Say("shop.nothing_due")));

    private static TableView Table(string id, IEnumerable<ServiceDue> due, ShopContext shop) => TableView.Of(
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
            Left(d, shop),
            Cell.Of(shop.OpenJobOf(d.Unit) is { } job ? shop.Say("shop.here.job", ("number", job.Number)) : null) with { Whole = true },
        ]));

    private static Cell Left(ServiceDue due, ShopContext shop)
    {
        var known = shop.Composition.Assessment.Lives.LastUse(due.Unit).Use;
        return due.At is { } at && at.Measure == known.Measure && at.Amount < known.Amount
            ? Cell.Use(at with { Amount = at.Amount - known.Amount }, shop.Composition) with { Text = shop.Say("shop.over", ("use", UseWords.Of(known with { Amount = known.Amount - at.Amount }, shop.Composition))), Strong = true }
            : Cell.Use(due.Left, shop.Composition);
    }

    // What the wear itself asks for, whatever the last job wrote: parts that may reach their limit soonest.
    private static TableView Looks(ShopContext shop)
    {
        var assessment = shop.Composition.Assessment;
        return TableView.Of(
            "looks",
            shop.Say("shop.looks.caption"),
            [shop.Say("shop.unit"), shop.Say("shop.part"), shop.Say("history.measure"), shop.Say("history.look_within"), shop.Say("history.look_by"), shop.Say("history.look_by_latest"), shop.Say("history.limit_in")],
            shop.Book.Units.Values
                .SelectMany(u => UnitTrends.Of(u, assessment.Lives, assessment.Jobs).Where(t => t.Line is not null).OrderBy(t => t.Line!.LookAgainWithin).Take(1).Select(t => (Unit: u, Trend: t)))
                .OrderBy(t => t.Trend.LookAgain!.EarliestBy ?? t.Trend.LookAgain.By ?? DateOnly.MaxValue)
                .Select(t => (IReadOnlyList<Cell>)
                [
                    shop.UnitCell(t.Unit, ShopContext.Service),
                    Cell.Of(t.Trend.Part.Name),
                    Cell.Of(t.Trend.Measure.Name),
                    Cell.Use(t.Trend.UseNow with { Amount = Math.Floor(t.Trend.Line!.LookAgainWithin) }, shop.Composition),
                    Cell.Day(t.Trend.LookAgain!.EarliestBy ?? t.Trend.LookAgain.By, shop.Composition),
                    Cell.Day(t.Trend.LookAgain!.LatestBy, shop.Composition),
                    Cell.Use(t.Trend.UseNow with { Amount = Math.Floor(t.Trend.Line!.Remaining) }, shop.Composition),
                ]));
    }

    private static string StateKey(DueState state) => state switch
    {
        DueState.Now => "shop.due.now",
        DueState.Soon => "shop.due.soon",
        _ => "shop.due.not_yet",
    };
}
