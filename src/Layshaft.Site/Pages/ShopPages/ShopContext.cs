using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Pages.ShopPages.Tallies;
using Layshaft.Site.Pages.Tables;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>What the shop's own pages are composed from. They are never for upload: notes and costs stand here and nowhere else.</summary>
/// <param name="Composition">What pages are composed from; of its jobs at least those of which a unit is still in the shop.</param>
/// <param name="Tally">What is counted over all jobs.</param>
public sealed record ShopContext(Composition Composition, ShopTally Tally)
{
    /// <summary>The bench.</summary>
    public const string Bench = Addresses.ShopIndex;

    /// <summary>What is due.</summary>
    public const string Service = Addresses.Shop + "/service.html";

    /// <summary>Part life.</summary>
    public const string Lives = Addresses.Shop + "/lives.html";

    /// <summary>Parts to order, shims, instruments.</summary>
    public const string Stores = Addresses.Shop + "/stores.html";

    /// <summary>The seasons.</summary>
    public const string Seasons = Addresses.Shop + "/seasons.html";

    /// <summary>How many rows of a table a page shows: the files beside it hold all, and a page of tens of thousands opens slowly.</summary>
    public const int MostRows = 500;

    /// <summary>The newest day of the book: days are counted to it.</summary>
    public DateOnly AsOf { get; } = BookDay.Newest(Composition.Book, Tally.Newest) ?? DateOnly.MinValue;

    /// <summary>The book; of its jobs at least those of which a unit is still in the shop.</summary>
    public ShopBook Book => Composition.Book;

    /// <summary>The jobs that are not finished, the longest in first.</summary>
    public IEnumerable<Job> OpenJobs => Book.Jobs.Where(IsOpen);

    /// <summary>The jobs of which a unit is still in the shop.</summary>
    public IEnumerable<Job> JobsOnTheBench => Book.Jobs.Where(j => IsOnTheBench(j, Book));

    /// <summary>Whether the shop names the months of its season; otherwise a season is a calendar year.</summary>
    public bool HasSeason => Book.Shop.Season != SeasonCalendar.AllYear;

    /// <summary>The season that a day belongs to.</summary>
    public Season SeasonOf(DateOnly day) => Book.Shop.Season.SeasonOf(day);

    /// <summary>The context of a whole book.</summary>
    public static ShopContext Of(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return new ShopContext(composition, ShopTally.Of(composition.Assessment));
    }

    /// <summary>Whether a job's unit is still in the shop: it is open, or it was declined and nobody has collected the unit.</summary>
    /// <param name="job">The job.</param>
    /// <param name="book">The book, or a part of it that holds the unit's jobs.</param>
    public static bool IsOnTheBench(Job job, ShopBook book)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(book);
        return job.Finished is null && (job.Stage != JobStage.Declined || !IsGone(job, book));
    }

    /// <summary>The latest open job of a unit; null when it has none.</summary>
    public Job? OpenJobOf(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Book.JobsOf(unit.Id).LastOrDefault(IsOpen);
    }

    /// <summary>What to say above a table of which a page shows no more than <see cref="MostRows"/>; nothing of one that it shows whole.</summary>
    /// <param name="table">The whole table.</param>
    /// <param name="key">The sentence.</param>
    public IEnumerable<string> Shortened(TableView table, string key)
    {
        ArgumentNullException.ThrowIfNull(table);
        return table.Rows.Count > MostRows ? [Say(key, ("shown", MostRows), ("count", table.Rows.Count))] : [];
    }

    /// <summary>A sentence of the texts.</summary>
    public string Say(string key, params (string Name, object Value)[] values) => Composition.Say(key, values);

    /// <summary>The view of a unit's owner of today.</summary>
    public OwnerView CurrentView(Unit unit) => OwnerView.Of(Book, unit)[^1];

    /// <summary>A unit's serial, with the way to its history as its owner of today sees it.</summary>
    public Cell UnitCell(Unit unit, string page)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Cell.To(unit.Serial, Addresses.Link(page, Composition.Addresses.History(CurrentView(unit))));
    }

    /// <summary>A job's number, with the way to its page as the customer sees it.</summary>
    public Cell JobCell(Job job, string page)
    {
        ArgumentNullException.ThrowIfNull(job);
        var unit = Book.Units[job.Unit];
        var view = OwnerView.Of(Book, unit).First(v => v.IsOwn(job));
        return JobPages.Exists(view, job) ? Cell.To(job.Number, Addresses.Link(page, Composition.Addresses.Report(view, job))) : Cell.Of(job.Number);
    }

    private static bool IsOpen(Job job) => job.Finished is null && job.Stage != JobStage.Declined;

    // A unit that came in again later was collected before, whether anybody wrote it down or not.
    private static bool IsGone(Job job, ShopBook book) => job.Collected is not null || book.JobsOf(job.Unit).Any(j => j.Received > job.Received);

    /// <summary>Makes a page.</summary>
    public SheetPage Page(string page, string headingKey, IReadOnlyList<TableView> tables, params IEnumerable<SectionView?> sections) => new(
        PageFrame.Head(
            Composition,
            page,
            Say("shop.title", ("page", Say(headingKey)), ("shop", Composition.Shop.Name)),
            null,
            links: [.. ShopPageList.All.Select(p => (p.Path, p.Title)).Where(l => l.Path != page).Append((Path: Addresses.ReferenceIndex, Title: "shop.reference")).Select(l => new LinkView(Addresses.Link(page, l.Path), Say(l.Title)))]),
        Say(headingKey),
        null,
        Say("shop.as_of", ("date", Composition.Figures.Date(AsOf))),
        [.. sections.OfType<SectionView>(), DataFiles.Section(page, tables, Composition)],
        tables,
        PageFrame.PlainFoot(Composition));
}
