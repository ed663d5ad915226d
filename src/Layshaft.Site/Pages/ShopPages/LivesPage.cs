using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>How long parts last over the whole shop: by kind, by gear, by the driver's experience.</summary>
public static class LivesPage
{
    /// <summary>The tables of the page, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["kinds", "gears", "drivers", "lives"];

    /// <summary>Composes the page.</summary>
    public static SheetPage Compose(ShopContext shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var kinds = ShopLives.Of(shop.Book, shop.Tally.Lives);
        TableView[] tables =
        [
            Table("kinds", kinds.Select(k => (KindName(k, shop), k.All, k.Measure)), shop),
            Table("gears", kinds.SelectMany(k => k.ByGear.Select(g => (shop.Say("shop.lives.of_gear", ("kind", KindName(k, shop)), ("gear", GearWords.Of(g.Gear, shop.Composition))), g.Life, k.Measure))), shop),
            Table("drivers", kinds.Where(k => k.All.Sampling.Sample.Failures > 0).SelectMany(k => k.ByDriver.Select(d => (shop.Say("shop.lives.of_driver", ("kind", KindName(k, shop)), ("driver", shop.Say(DriverKey(d.Driver)))), d.Life, k.Measure))), shop),
            Lives(shop),
        ];
        return shop.Page(
            ShopContext.Lives,
            "shop.lives",
            tables,
            BlocksView.Section(
                "kinds",
                shop.Say("shop.lives.kinds"),
                [
                    Block.Say(shop.Say("shop.lives.counted"), Sources(shop), shop.Say("shop.lives.left_out", ("count", kinds.Sum(k => k.All.Sampling.LeftOut.Count)))),
                    new Block { Table = tables.Named("kinds") },
                    .. kinds.Where(k => k.All.Sampling.Sample.Failures > 0).Select(k => Shown(k, shop)),
                ]),
            tables.Named("gears").Rows.Count > 0 ? BlocksView.Section("gears", shop.Say("shop.lives.gears"), new Block { Table = tables.Named("gears"), Fold = shop.Say("shop.lives.gears.fold") }) : null,
            tables.Named("drivers").Rows.Count > 0 ? BlocksView.Section("drivers", shop.Say("shop.lives.drivers"), [new Block { Table = tables.Named("drivers") }, Block.Say([.. Compared(kinds, shop)])]) : null,
            BlocksView.Section("lives", shop.Say("shop.lives.all"), new Block { Lines = [.. shop.Shortened(tables.Named("lives"), "shop.rows.newest")], Table = tables.Named("lives").Last(ShopContext.MostRows), Fold = shop.Say("shop.lives.all.fold") }));
    }

    private static TableView Table(string id, IEnumerable<(string Name, GroupLife Life, UseMeasure Measure)> groups, ShopContext shop) => TableView.Of(
        id,
        shop.Say($"shop.lives.{id}.caption"),
        [shop.Say("shop.lives.group"), shop.Say("shop.lives.units"), shop.Say("shop.lives.failures"), shop.Say("shop.lives.longest"), shop.Say("shop.lives.b10"), shop.Say("shop.lives.b10_low"), shop.Say("shop.lives.b10_high")],
        groups.Select(g => (IReadOnlyList<Cell>)
        [
            Cell.Of(g.Name),
            Cell.Count(g.Life.Sampling.Sample.Lives.Count),
            Cell.Count(g.Life.Sampling.Sample.Failures),
            Amount(g.Life.Curve.SeenTo, g.Measure, shop),
            g.Life.Estimate is LifeUnsaid { Reason: LifeUnsaidReason.TooFew } ? Cell.Empty with { Text = shop.Say("shop.lives.few") } : Amount(Fit(g.Life)?.LifeAt(GroupLife.Tenth), g.Measure, shop),
            Bound(g.Life.TenthBounds?.Lower, Math.Floor, g.Measure, shop),
            Bound(g.Life.TenthBounds?.Upper, Math.Ceiling, g.Measure, shop),
        ]));

    private static TableView Lives(ShopContext shop)
    {
        // Tens of thousands of rows say the same few words over and over.
        var cells = new Dictionary<string, Cell>(StringComparer.Ordinal);
        Cell Words(string text) => cells.TryGetValue(text, out var cell) ? cell : cells[text] = Cell.Of(text);
        Cell Said(string key) => cells.TryGetValue(key, out var cell) ? cell : cells[key] = Words(shop.Say(key));

        return TableView.Of(
            "lives",
            shop.Say("shop.lives.all.caption"),
            [shop.Say("shop.part"), shop.Say("history.serial"), shop.Say("shop.lives.where"), shop.Say("shop.lives.ran"), shop.Say("shop.lives.end"), shop.Say("shop.lives.source")],
            shop.Tally.Lives.Where(l => l.Life.End != LifeEnd.Running || l.Serial is not null).Select(l => (IReadOnlyList<Cell>)
            [
                Words(l.PartIn(shop.Book).Name),
                Cell.Of(l.Serial),
                Words(string.Join(", ", l.Units.Select(u => shop.Book.Units[u].Serial))),
                l.Life.Total.Measures is [var measure] ? Cell.Use(new Use(l.Life.Total.In(measure)!.Value, measure), shop.Composition) : Cell.Empty,
                Said(EndKey(l.Life)),
                l.Life.End == LifeEnd.Renewed ? Said(SourceKey(l.Source)) : Cell.Empty,
            ]));
    }

    // Which rule decided how often, so that the reader sees what the figures rest on.
    private static string Sources(ShopContext shop)
    {
        ReasonSource[] sources = [.. shop.Tally.Lives.Where(l => l.Life.End == LifeEnd.Renewed).Select(l => l.Source)];
        int By(ReasonSource source) => sources.Count(s => s == source);
        return shop.Say("shop.lives.sources", ("count", sources.Length), ("written", By(ReasonSource.Written)), ("grade", By(ReasonSource.Grade)), ("kind", By(ReasonSource.Kind)), ("none", By(ReasonSource.None)));
    }

    private static string SourceKey(ReasonSource source) => source switch
    {
        ReasonSource.Written => "shop.lives.source.written",
        ReasonSource.Grade => "shop.lives.source.grade",
        ReasonSource.Kind => "shop.lives.source.kind",
        ReasonSource.None => "shop.lives.source.none",
    };

    private static Block Shown(KindLife kind, ShopContext shop) => new()
    {
        Heading = KindName(kind, shop),
        Lines = [Words(kind, shop)],
        Chart = SurvivalDrawing.Of(kind, KindName(kind, shop), shop.Composition),
    };

    private static string Words(KindLife kind, ShopContext shop)
    {
        if (kind.All.Estimate is not WeibullFit fit)
        {
            var unsaid = (LifeUnsaid)kind.All.Estimate;
            return unsaid.Reason == LifeUnsaidReason.TooFew
                ? shop.Say("shop.lives.too_few", ("failures", unsaid.Failures), ("units", unsaid.Units), ("least", Weibull.LeastFailures), ("parts", Weibull.LeastParts))
                : shop.Say("shop.lives.no_spread");
        }

        var bounds = kind.All.TenthBounds!.Value;
        return shop.Say(
            "shop.lives.said",
            ("b10", Text(Math.Round(fit.LifeAt(GroupLife.Tenth)), kind.Measure, shop)),
            ("low", Outwards(bounds.Lower, Math.Floor) is { } low ? Text(low, kind.Measure, shop) : shop.Say("shop.lives.open")),
            ("high", Outwards(bounds.Upper, Math.Ceiling) is { } high ? Text(high, kind.Measure, shop) : shop.Say("shop.lives.open")),
            ("shape", shop.Composition.Figures.Number(fit.Shape, 1).Text));
    }

    private static IEnumerable<string> Compared(IReadOnlyList<KindLife> kinds, ShopContext shop)
    {
        foreach (var kind in kinds.Where(k => k.ByDriver.Count > 1 && k.All.Sampling.Sample.Failures > 0))
        {
            yield return LifeComparison.Of([.. kind.ByDriver.Select(d => d.Life.Sampling.Sample)]) is LifeDifference test
                ? shop.Say(test.PValue <= 0.05 ? "shop.lives.differ" : "shop.lives.alike", ("kind", KindName(kind, shop)), ("chance", shop.Composition.Figures.Percent(test.PValue, 1).Text))
                : shop.Say("shop.lives.not_compared", ("kind", KindName(kind, shop)), ("failures", kind.All.Sampling.Sample.Failures));
        }
    }

    private static WeibullFit? Fit(GroupLife life) => life.Estimate as WeibullFit;

    // On the page; a program reads the bound itself.
    private static Cell Bound(double? bound, Func<double, double> round, UseMeasure measure, ShopContext shop) =>
        Amount(bound, measure, shop) with { Text = Amount(Outwards(bound, round), measure, shop).Text };

    // A bound as a whole number is not to say more than the bound.
    private static double? Outwards(double? bound, Func<double, double> round) => bound is { } b ? round(b) : null;

    private static Cell Amount(double? amount, UseMeasure measure, ShopContext shop) => Cell.Use(amount is { } a ? new Use(a, measure) : null, shop.Composition);

    private static string Text(double amount, UseMeasure measure, ShopContext shop) => UseWords.Of(new Use(amount, measure), shop.Composition);

    private static string KindName(KindLife kind, ShopContext shop) => shop.Say(
        kind.Measure switch { UseMeasure.Hours => "shop.lives.in_hours", UseMeasure.Kilometres => "shop.lives.in_kilometres", UseMeasure.Events => "shop.lives.in_events" },
        ("kind", shop.Say(KindKey(kind.Kind))));

    private static string KindKey(PartKind kind) => kind switch
    {
        PartKind.Gear => "life.kind.gear",
        PartKind.DogRing => "life.kind.dog_ring",
        PartKind.Hub => "life.kind.hub",
        PartKind.Selector => "life.kind.selector",
        PartKind.Bearing => "life.kind.bearing",
        PartKind.Shaft => "life.kind.shaft",
        PartKind.DropGear => "life.kind.drop_gear",
        PartKind.FinalDrive => "life.kind.final_drive",
        PartKind.Case => "life.kind.case",
        PartKind.Seal => "life.kind.seal",
        PartKind.FrictionPlate => "life.kind.friction_plate",
        PartKind.RampRing => "life.kind.ramp_ring",
        PartKind.DifferentialGear => "life.kind.differential_gear",
        PartKind.Spring => "life.kind.spring",
        PartKind.SynchroRing => "life.kind.synchro_ring",
        PartKind.Drum => "life.kind.drum",
        PartKind.Ratchet => "life.kind.ratchet",
        PartKind.Interlock => "life.kind.interlock",
        PartKind.Pump => "life.kind.pump",
        PartKind.Chain => "life.kind.chain",
        PartKind.Clutch => "life.kind.clutch",
        PartKind.Sensor => "life.kind.sensor",
        PartKind.Idler => "life.kind.idler",
    };

    private static string DriverKey(DriverExperience driver) => driver switch
    {
        DriverExperience.FirstSeason => "life.driver.first",
        DriverExperience.SomeSeasons => "life.driver.some",
        DriverExperience.ManySeasons => "life.driver.many",
    };

    private static string EndKey(LifeTotal life) => life.End switch
    {
        LifeEnd.Running => "history.ended.running",
        LifeEnd.OnTheShelf => "history.ended.out",
        LifeEnd.Renewed => life.Reason switch
        {
            RenewalReason.Condition => "history.ended.condition",
            RenewalReason.Precaution => "history.ended.precaution",
            RenewalReason.NotRecorded => "history.ended.renewed",
        },
    };
}
