using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment;
using Layshaft.Site.Assessment.Lives;

namespace Layshaft.Site.Pages.History;

/// <summary>What the sections of a unit's history are composed from: only what its reader may know.</summary>
/// <param name="Composition">What pages are composed from.</param>
/// <param name="View">Whose history it is.</param>
/// <param name="Lives">The lives of the parts, as far as his time goes.</param>
public sealed record HistoryContext(Composition Composition, OwnerView View, LifeAssessment Lives)
{
    /// <summary>The unit.</summary>
    public Unit Unit => View.Unit;

    /// <summary>Its type.</summary>
    public Gearbox Gearbox => Composition.Book.GearboxOf(Unit);

    /// <summary>Path of the page.</summary>
    public string Page => Composition.Addresses.History(View);

    /// <summary>The jobs that he may see, judged, earliest first.</summary>
    public IReadOnlyList<JobAssessment> Jobs => [.. View.Jobs.Select(j => Composition.Assessment.Jobs[j.Number])];

    /// <summary>Whether the shop names the months of its season; otherwise a season is a calendar year.</summary>
    public bool HasSeason => Composition.Shop.Season != Engineering.Life.SeasonCalendar.AllYear;

    /// <summary>
    /// The day on which a part's stay in the unit ended or was last seen; null where only another customer's job tells it: the one that
    /// took a part out of this unit for theirs.
    /// </summary>
    /// <param name="day">The day as the ledger has it.</param>
    public DateOnly? Known(DateOnly day) => OwnDays.Contains(day) || Lives.Book.Jobs.Any(j => j.Received == day && IsTheReaders(j)) ? day : null;

    /// <summary>The last day not after another that the unit's own record tells.</summary>
    /// <param name="day">The day.</param>
    public DateOnly LastKnown(DateOnly day) => Known(day) ?? OwnDays.Where(d => d <= day).DefaultIfEmpty(Unit.InService).Max();

    private IEnumerable<DateOnly> OwnDays => Lives.Book.JobsOf(Unit.Id).Select(j => j.Received).Append(Unit.InService);

    private bool IsTheReaders(Job job) =>
        job.Renewed.Any(r => r.From == Unit.Id) && Composition.Book.Units[job.Unit].OwnerOn(job.Received).Customer == View.Owner.Customer;

    /// <summary>The link to the report on a job, or to its estimate; null while there is nothing to read.</summary>
    public string? LinkTo(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return JobPages.Exists(View, job) ? Addresses.Link(Page, Composition.Addresses.Report(View, job)) : null;
    }

    /// <summary>
    /// The context of a view. For an owner who sold the unit the lives are worked out from a book that ends with his time,
    /// so that nothing later can reach his pages.
    /// </summary>
    public static HistoryContext Of(Composition composition, OwnerView view)
    {
        ArgumentNullException.ThrowIfNull(composition);
        ArgumentNullException.ThrowIfNull(view);
        if (view.IsCurrent)
        {
            return new HistoryContext(composition, view, composition.Assessment.Lives);
        }

        var end = view.Unit.Owners[view.Index + 1].From;
        var book = composition.Book with { Jobs = [.. composition.Book.Jobs.Where(j => j.Received < end)] };
        return new HistoryContext(composition, view, LifeAssessment.Of(book, composition.Assessment.Jobs, new ProblemList()));
    }
}
