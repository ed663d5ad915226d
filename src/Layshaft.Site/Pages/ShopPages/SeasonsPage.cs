using Layshaft.Engineering.Life;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>What each season brought: jobs, running, renewals by part.</summary>
public static class SeasonsPage
{
    /// <summary>The tables of the page, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["seasons", "running", "renewals"];

    /// <summary>Composes the page.</summary>
    public static SheetPage Compose(ShopContext shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        Season[] seasons = [.. shop.Tally.Jobs.Select(j => shop.SeasonOf(j.Received)).Distinct().OrderByDescending(s => s.FirstYear)];
        TableView[] tables = [Seasons(shop, seasons), Running(shop), Renewals(shop, seasons)];
        return shop.Page(
            ShopContext.Seasons,
            "shop.seasons",
            tables,
            BlocksView.Section("seasons", shop.Say("shop.seasons.jobs"), tables.Named("seasons").Rows.Count > 0 ? new Block { Table = tables.Named("seasons") } : Block.Say(shop.Say("shop.open.none"))),
            tables.Named("running").Rows.Count > 0 ? BlocksView.Section("running", shop.Say("shop.running"), new Block { Lines = [shop.Say("shop.running.words")], Table = tables.Named("running") }) : null,
            tables.Named("renewals").Rows.Count > 0 ? BlocksView.Section("renewals", shop.Say("shop.renewals"), new Block { Table = tables.Named("renewals") }) : null);
    }

    private static TableView Seasons(ShopContext shop, Season[] seasons) => TableView.Of(
        "seasons",
        shop.Say(shop.HasSeason ? "shop.seasons.caption.season" : "shop.seasons.caption"),
        [shop.Say(shop.HasSeason ? "shop.season.season" : "shop.season"), shop.Say("shop.jobs_in"), shop.Say("shop.jobs_done"), shop.Say("shop.units_seen"), shop.Say("shop.parts_renewed"), shop.Say("shop.billed")],
        seasons.Select(s => (IReadOnlyList<Cell>)
        [
            Cell.Of(s.ToString()),
            Cell.Count(In(shop, s).Length),
            Cell.Count(shop.Tally.Jobs.Count(j => FinishedIn(j, shop, s))),
            Cell.Count(In(shop, s).Select(j => j.Unit).Distinct().Count()),
            Cell.Count(In(shop, s).Sum(j => j.Renewed.Count)),
            Cell.Money(shop.Tally.Jobs.Where(j => FinishedIn(j, shop, s)).Sum(j => j.Net), shop.Composition),
        ]));

    private static TableView Running(ShopContext shop) => TableView.Of(
        "running",
        shop.Say(shop.HasSeason ? "shop.running.caption.season" : "shop.running.caption"),
        [shop.Say(shop.HasSeason ? "shop.season.season" : "shop.season"), shop.Say("shop.unit"), shop.Say("shop.ran")],
        shop.Tally.Units.SelectMany(u => u.Seasons.Select(s => (Run: s, u.Unit, u.Use.Measure)))
            .OrderByDescending(s => s.Run.Season.FirstYear).ThenBy(s => s.Unit, StringComparer.Ordinal)
            .Select(s => (IReadOnlyList<Cell>)[Cell.Of(s.Run.Season.ToString()), shop.UnitCell(shop.Book.Units[s.Unit], ShopContext.Seasons), Cell.Use(new Use(s.Run.Amount, s.Measure), shop.Composition)]));

    private static TableView Renewals(ShopContext shop, Season[] seasons) => TableView.Of(
        "renewals",
        shop.Say("shop.renewals.caption"),
        [shop.Say("shop.part"), shop.Say("shop.gearbox"), .. seasons.Select(s => s.ToString()), shop.Say("shop.all")],
        shop.Tally.Jobs.SelectMany(j => j.Renewed.Select(r => (Season: shop.SeasonOf(j.Received), Gearbox: shop.Book.Units[j.Unit].Gearbox, Part: r)))
            .GroupBy(r => (r.Gearbox, r.Part))
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key.Gearbox, StringComparer.Ordinal).ThenBy(g => g.Key.Part, StringComparer.Ordinal)
            .Select(g => (IReadOnlyList<Cell>)
            [
                Cell.Of(shop.Book.Gearboxes[g.Key.Gearbox].PartOf(g.Key.Part)!.Name),
                Cell.Of(shop.Book.Gearboxes[g.Key.Gearbox].Name),
                .. seasons.Select(s => Cell.Count(g.Count(r => r.Season == s))),
                Cell.Count(g.Count()),
            ]));

    private static JobTally[] In(ShopContext shop, Season season) => [.. shop.Tally.Jobs.Where(j => shop.SeasonOf(j.Received) == season)];

    private static bool FinishedIn(JobTally job, ShopContext shop, Season season) => job.Finished is { } finished && shop.SeasonOf(finished) == season;
}
