using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.History;

/// <summary>Says what a unit's history says: its state, its seasons, its parts' lives, every trend, its gearing, its settings.</summary>
public static class HistoryComposer
{
    /// <summary>The tables of every history, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["jobs", "seasons", "parts", "readings", "trends", "gearing", "settings", "differential"];

    /// <summary>Composes the history of a unit for one of its owners.</summary>
    public static SheetPage Compose(Composition composition, OwnerView view)
    {
        composition = composition.About(composition.Book.GearboxOf(view.Unit));
        var history = HistoryContext.Of(composition, view);
        var unit = history.Unit;
        var trends = new TrendSection(history);
        TableView[] tables =
        [
            JobsSection.Table(history), JobsSection.Seasons(history), LivesSection.Table(history), trends.Readings(), trends.Table(),
            GearingSection.Table(history), SettingsSection.Table(history), DifferentialSection.Table(history),
        ];
        var sections = new[]
        {
            NowSection.Compose(history, trends),
            JobsSection.Compose(history, tables.Named("jobs"), tables.Named("seasons")),
            LivesSection.Compose(history, tables.Named("parts")),
            trends.Compose(),
            GearingSection.Compose(history, tables.Named("gearing")),
            SettingsSection.Compose(history, tables.Named("settings")),
            DifferentialSection.Compose(history, tables.Named("differential")),
            DataFiles.Section(history.Page, tables, composition),
        };
        return new SheetPage(
            PageFrame.Head(
                composition,
                history.Page,
                composition.Say("history.title", ("unit", unit.Serial), ("shop", composition.Shop.Name)),
                null) with
            { Preview = CardComposer.Preview(composition, view) },
            composition.Say("history.heading"),
            Block(history),
            null,
            [.. sections.OfType<SectionView>()],
            tables,
            PageFrame.Foot(composition));
    }

    private static TitleBlock Block(HistoryContext history)
    {
        var (composition, unit) = (history.Composition, history.Unit);
        var known = history.Lives.LastUse(unit);
        return new TitleBlock(
            composition.Say("block.unit"),
            composition.Say("block.unit_value", ("serial", unit.Serial), ("gearbox", history.Gearbox.Name)),
            [
                new(composition.Say("block.customer"), composition.Book.Customers[history.View.Owner.Customer].Name),
                new(composition.Say("history.since"), composition.Figures.Date(unit.InService)),
                new(composition.Say("history.use"), UseWords.Of(known.Use, composition)),
                new(composition.Say("history.use_on"), composition.Figures.Date(known.Date)),
            ]);
    }
}
