using Layshaft.Book.Records;

namespace Layshaft.Site.Pages;

/// <summary>
/// What one owner of a unit may see: his own jobs whole, those of earlier owners without names, words, prices and
/// private pictures, and none that came after his time.
/// </summary>
/// <param name="Unit">The unit.</param>
/// <param name="Index">Which of its owners, counted from 0.</param>
/// <param name="Jobs">The jobs that he may see, earliest first.</param>
public sealed record OwnerView(Unit Unit, int Index, IReadOnlyList<Job> Jobs)
{
    /// <summary>Whose view it is.</summary>
    public Ownership Owner => Unit.Owners[Index];

    /// <summary>Which of this owner's own times with the unit it is, from 1: a unit that was sold and bought back has two.</summary>
    public int Time => Unit.Owners.Take(Index + 1).Count(o => o.Customer == Owner.Customer);

    /// <summary>Whether it is the owner of today.</summary>
    public bool IsCurrent => Index == Unit.Owners.Count - 1;

    /// <summary>Whether a job was done for this owner.</summary>
    public bool IsOwn(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Unit.OwnerOn(job.Received) == Owner;
    }

    /// <summary>The views of all owners of a unit.</summary>
    public static IReadOnlyList<OwnerView> Of(ShopBook book, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(unit);
        Job[] jobs = [.. book.JobsOf(unit.Id)];
        return [.. unit.Owners.Select((_, i) => new OwnerView(
            unit,
            i,
            i + 1 < unit.Owners.Count ? [.. jobs.Where(j => j.Received < unit.Owners[i + 1].From)] : jobs))];
    }
}
