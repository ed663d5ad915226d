using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Pages.Estimates;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>The bench: every open job, its stage, what it waits for; unanswered estimates; the way to everything else.</summary>
public static class BenchPage
{
    /// <summary>The tables of the page, by their short names.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["bench", "unanswered", "customers"];

    /// <summary>Composes the page.</summary>
    public static SheetPage Compose(ShopContext shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        TableView[] tables = [Bench(shop), Unanswered(shop), Customers(shop)];
        return shop.Page(
            ShopContext.Bench,
            "shop.bench",
            tables,
            tables.Named("bench").Rows.Count > 0
                ? BlocksView.Section("bench", shop.Say("shop.open", ("count", tables.Named("bench").Rows.Count)), new Block { Lines = [shop.Say("shop.days.words")], Table = tables.Named("bench") }, Notes(shop))
                : BlocksView.Section("bench", shop.Say("shop.open", ("count", 0)), Block.Say(shop.Say("shop.open.none"))),
            tables.Named("unanswered").Rows.Count > 0
                ? BlocksView.Section("unanswered", shop.Say("shop.unanswered"), new Block { Table = tables.Named("unanswered") })
                : BlocksView.Section("unanswered", shop.Say("shop.unanswered"), Block.Say(shop.Say("shop.unanswered.none"))),
            BlocksView.Section("customers", shop.Say("shop.customers"), new Block { Lines = [shop.Say("shop.customers.words")], Table = tables.Named("customers") }));
    }

    private static TableView Bench(ShopContext shop) => TableView.Of(
        "bench",
        shop.Say("shop.bench.caption"),
        [
            shop.Say("shop.job"), shop.Say("shop.unit"), shop.Say("shop.customer"), shop.Say("shop.stage"), shop.Say("shop.waits"),
            shop.Say("shop.received"), shop.Say("shop.days"), shop.Say("shop.days_waiting"), shop.Say("shop.technician"), shop.Say("shop.sheet"),
        ],
        shop.JobsOnTheBench.Select(j => (IReadOnlyList<Cell>)
        [
            shop.JobCell(j, ShopContext.Bench),
            shop.UnitCell(shop.Book.Units[j.Unit], ShopContext.Bench),
            Cell.Of(CustomerOf(j, shop).Name),
            Cell.Of(StageOf(j, shop)),
            Cell.Of(WaitsFor(j, shop)),
            Cell.Day(j.Received, shop.Composition) with { Whole = false },
            Cell.Days(shop.AsOf.DayNumber - j.Received.DayNumber),
            Cell.Days(shop.AsOf.DayNumber - StageSince(j).DayNumber),
            Cell.Of(shop.Composition.Shop.Technicians.FirstOrDefault(t => t.Id == j.Technician)?.Name),
            Cell.To(shop.Say("shop.sheet.open"), Addresses.Link(ShopContext.Bench, Addresses.BenchSheet(j))),
        ]));

    // The answer to a supplement holds up a build that waits for parts as well; of an estimate the job's own text says more.
    private static string? WaitsFor(Job job, ShopContext shop)
    {
        string[] due =
        [
            .. OfferWords.Waiting(job).Where(o => o.Number > 0 || job.WaitsFor is null).Select(o => OfferWords.Say("shop.waits.answer", o, shop.Composition)),
            .. job.WaitsFor is { } written ? [written] : Array.Empty<string>(),
        ];
        return due.Length > 0 ? string.Join("; ", due) : NextStep(job, shop);
    }

    // What comes next where the job does not say it: parts that stock does not cover are named, for they are what holds a job up.
    private static string? NextStep(Job job, ShopContext shop) => job.Stage switch
    {
        JobStage.BookedIn => shop.Say("shop.waits.inspection"),
        JobStage.Inspected => shop.Say("shop.waits.estimate"),
        JobStage.Declined => shop.Say("shop.waits.collection"),
        JobStage.Rebuilding => PartsNeeded.Of(shop).Where(n => n.ToOrder > 0 && n.Jobs.Contains(job.Number)).Select(n => n.Part.Name).ToArray() is { Length: > 0 } parts
            ? shop.Say("shop.waits.parts", ("parts", string.Join(", ", parts)))
            : shop.Say("shop.waits.rebuild"),
        _ => null,
    };

    private static DateOnly StageSince(Job job) => job.Offers.Where(o => o.Waits).Min(o => (DateOnly?)o.Sent) ?? job.LastAnswer ?? job.Stripped ?? job.Received;

    private static TableView Unanswered(ShopContext shop) => TableView.Of(
        "unanswered",
        shop.Say("shop.unanswered.caption"),
        [
            shop.Say("shop.job"), shop.Say("offer.what"), shop.Say("shop.customer"), shop.Say("shop.telephone"), shop.Say("shop.sent"), shop.Say("shop.valid_until"),
            shop.Say("shop.days_left"), shop.Say("shop.amount"),
        ],
        shop.OpenJobs.SelectMany(j => OfferWords.Waiting(j).Select(o => (Job: j, Offer: o, Until: EstimateComposer.ValidUntil(o, shop.Composition.Shop)))).OrderBy(j => j.Until).Select(j => (IReadOnlyList<Cell>)
        [
            shop.JobCell(j.Job, ShopContext.Bench),
            Cell.Of(OfferName(j.Offer, shop)),
            Cell.Of(CustomerOf(j.Job, shop).Name),
            Cell.Of(CustomerOf(j.Job, shop).Telephone),
            Cell.Day(j.Offer.Sent, shop.Composition),
            Cell.Day(j.Until, shop.Composition),
            j.Until < shop.AsOf ? Cell.Of(shop.Say("shop.expired")) with { Strong = true } : Cell.Days(j.Until.DayNumber - shop.AsOf.DayNumber),
            Cell.Money(Account.Of(j.Offer.Lines, shop.Book.GearboxOf(shop.Book.Units[j.Job.Unit]), shop.Composition.Shop).Gross, shop.Composition),
        ]));

    private static string OfferName(Offer offer, ShopContext shop) => OfferWords.Say("shop.offer", offer, shop.Composition) is var name && offer.IsFromGrades
        ? shop.Say("shop.offer.from_grades", ("offer", name))
        : name;

    private static TableView Customers(ShopContext shop) => TableView.Of(
        "customers",
        shop.Say("shop.customers.caption"),
        [shop.Say("shop.unit"), shop.Say("shop.gearbox"), shop.Say("shop.customer"), shop.Say("shop.owned"), shop.Say("shop.last_page")],
        shop.Tally.Units.SelectMany(t => OwnerView.Of(shop.Book, shop.Book.Units[t.Unit]).Reverse().Select(v => (View: v, Last: t.LastPages[v.Index]))).Select(u => (IReadOnlyList<Cell>)
        [
            Cell.To(u.View.Unit.Serial, Addresses.Link(ShopContext.Bench, shop.Composition.Addresses.History(u.View))),
            Cell.Of(shop.Book.GearboxOf(u.View.Unit).Name),
            Cell.Of(shop.Book.Customers[u.View.Owner.Customer].Name),
            Cell.Of(shop.Say(u.View.IsCurrent ? "shop.owned.now" : "shop.owned.before", ("date", shop.Composition.Figures.Date(u.View.Owner.From)))),
            u.Last is { } last
                ? Cell.To(shop.Say("shop.page_of", ("number", last)), Addresses.Link(ShopContext.Bench, shop.Composition.Addresses.Report(u.View, last)))
                : Cell.Empty,
        ]));

    // For the shop's eyes: what stands beside the open jobs, and beside their customers and units.
    private static Block Notes(ShopContext shop) => new()
    {
        Fold = shop.Say("shop.notes"),
        Lines = [.. shop.OpenJobs.SelectMany(j => NotesOf(j, shop).Select(n => shop.Say("shop.note", ("number", j.Number), ("words", n)))).DefaultIfEmpty(shop.Say("shop.notes.none"))],
    };

    private static IEnumerable<string> NotesOf(Job job, ShopContext shop)
    {
        var unit = shop.Book.Units[job.Unit];
        string?[] notes =
        [
            job.InternalNotes is { } file && shop.Composition.Notes.TryGetValue($"{job.Folder}/{file}", out var text) ? text.Trim() : null,
            .. job.Offers.Select(o => o.GoAhead?.Note),
            .. job.Findings.Select(f => f.InternalNote),
            unit.InternalNotes,
            CustomerOf(job, shop).InternalNotes,
        ];
        return notes.OfType<string>();
    }

    private static Customer CustomerOf(Job job, ShopContext shop) => shop.Book.Customers[shop.Book.Units[job.Unit].OwnerOn(job.Received).Customer];

    private static string StageOf(Job job, ShopContext shop) => job.Stage == JobStage.AwaitingGoAhead
        ? OfferWords.Say("shop.stage.awaiting", OfferWords.Waiting(job)[0], shop.Composition)
        : shop.Say(StageKey(job.Stage));

    private static string StageKey(JobStage stage) => stage switch
    {
        JobStage.BookedIn => "shop.stage.booked_in",
        JobStage.Inspected => "shop.stage.inspected",
        JobStage.Rebuilding => "shop.stage.rebuilding",
        JobStage.Declined => "shop.stage.declined",
        JobStage.AwaitingGoAhead => "shop.stage.awaiting",
        JobStage.Finished => "shop.stage.finished",
    };
}
